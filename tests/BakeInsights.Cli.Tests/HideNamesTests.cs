using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Cli.Tests;

/// <summary>With <c>--hide-names</c> nothing that is printed or written names a baker.</summary>
[Collection(nameof(Command))]
public sealed class HideNamesTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void No_baker_of_the_demo_is_named_in_any_output()
    {
        var names = Journal.Read(Command.Demo).Bakes.Select(bake => bake[BakeColumns.Baker]).OfType<string>().Distinct().ToList();
        Assert.NotEmpty(names);
        var target = _folder.File("out.csv");
        string[] outputs =
        [
            Command.Run("check", Command.Demo, "--hide-names").Out,
            Command.Run("check", Command.Demo, "--hide-names", "--json").Out,
            Command.Run("check", Command.Demo, "--hide-names", "--to", target).Out,
            Command.Run("fit", Command.Demo, "--hide-names").Out,
            Command.Run("fit", Command.Demo, "--hide-names", "--json").Out,
            File.ReadAllText(target),
        ];
        Assert.All(outputs, output =>
        {
            Assert.NotEmpty(output);
            Assert.All(names, name => Assert.DoesNotContain(name, output, StringComparison.OrdinalIgnoreCase));
        });
        Assert.Contains(",baker A,", outputs[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Numbers_stay_what_they_are() => Assert.Equal(
        Command.Run("fit", Command.Demo, "--json").Json["rise_time"]!.ToJsonString(),
        Command.Run("fit", Command.Demo, "--hide-names", "--json").Json["rise_time"]!.ToJsonString());

    [Fact]
    public void Names_in_notes_notices_and_own_columns_are_hidden_too()
    {
        var journal = _folder.Write(
            "bakes.csv",
            "bake_id,baked_on,baker,dov_score,dough_temp_c,notes\nDov-1,2026-10-01,Anselma,3,dov's,Dov said no\nb,2026-10-02,Dov,4,24,\nc,2026-10-03,\"Dov,,\n");
        var target = _folder.File("out.csv");
        var check = Command.Run("check", journal, "--hide-names", "--to", target);
        Assert.Equal(1, check.Status);
        Assert.DoesNotContain("dov", check.Out, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(
            "bake_id,baked_on,baker,dough_temp_c,notes,baker B_score\n"
            + "baker B-1,2026-10-01,baker A,,baker B said no,3\nb,2026-10-02,baker B,24,,4\n",
            File.ReadAllText(target));
    }
}
