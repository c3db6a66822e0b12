using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Cli.Tests;

/// <summary><c>add</c> with every field given: no questions.</summary>
[Collection(nameof(Command))]
public sealed class AddCommandTests : IDisposable
{
    private const string Header = "bake_id,baked_on,baker,flour_g,dough_temp_c,rise_min,press_test\n";
    private const string First = "ML-46,2026-10-31,Dov,1000,24.4,95,\n";

    private readonly TemporaryFolder _folder = new();
    private readonly string _file;

    public AddCommandTests() => _file = _folder.Write("bakes.csv", Header + First);

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void A_bake_is_added_and_shown_as_it_was_understood()
    {
        var add = Add("--set", "baked_on=2026-11-03", "--set", "dough_temp_c=76F", "--set", "flour_g=1100", "--set", "baker=Dov");
        Assert.Equal((0, ""), (add.Status, add.Error));
        Assert.Equal(
            $"""
            A bake for bakes.csv, as it will be written and as it is understood:
            Field         Written     Understood
            ------------  ----------  ----------
            bake_id       ML-47       ML-47
            baked_on      2026-11-03  2026-11-03
            baker         Dov         Dov
            flour_g       1100        1100 g
            dough_temp_c  76F         24.44 °C

            Added ML-47 to {_file}, line 3.

            """,
            add.Out);
        Assert.Equal(Header + First + "ML-47,2026-11-03,Dov,1100,76F,,\n", File.ReadAllText(_file));
        Assert.Equal([_file], Directory.GetFileSystemEntries(_folder.Path));
    }

    [Fact]
    public void Numbers_typed_in_us_units_are_written_in_the_files()
    {
        var add = Add("--units", "us", "--set", "baked_on=2026-11-03", "--set", "dough_temp=77", "--set", "flour_oz=35", "--set", "rise_h=1.5");
        Assert.Contains("dough_temp_c  25          77 °F", add.Out, StringComparison.Ordinal);
        Assert.EndsWith("ML-47,2026-11-03,,992.2,25,90,\n", File.ReadAllText(_file), StringComparison.Ordinal);
    }

    [Fact]
    public void A_bare_number_for_a_column_named_in_full_is_in_the_columns_unit()
    {
        Add("--units", "us", "--set", "baked_on=2026-11-03", "--set", "dough_temp_c=25");
        Assert.EndsWith("ML-47,2026-11-03,,,25,,\n", File.ReadAllText(_file), StringComparison.Ordinal);
    }

    [Fact]
    public void An_unknown_field_is_refused_with_the_nearest_there_are() => RefusesAndLeaves(
        $"{_file} has no column dough_tmp: it has dough_temp_c, flour_g, bake_id, baked_on, rise_min, press_test, baker.",
        "--set", "dough_tmp=24");

    [Fact]
    public void A_cell_that_is_not_read_is_refused() => RefusesAndLeaves(
        "press_test, 'bouncy': The column does not know this word. "
        + "Write one of springs_back, slow_return, keeps_dent, collapses. Nothing was added.",
        "--set", "baked_on=2026-11-03", "--set", "press_test=bouncy");

    [Fact]
    public void A_bake_without_a_day_is_refused() => RefusesAndLeaves(
        "baked_on: The bake has no day. Write the day as year-month-day, such as 2026-10-31. Nothing was added.", "--set", "baker=Dov");

    [Fact]
    public void A_name_used_before_is_refused() => RefusesAndLeaves(
        "bake_id, 'ML-46': This bake_id is already that of bakes.csv, line 2; the first stays. "
        + "Give each bake a bake_id of its own, or delete the copy. Nothing was added.",
        "--set", "baked_on=2026-11-03", "--set", "bake_id=ML-46");

    [Fact]
    public void A_field_given_twice_is_refused() => RefusesAndLeaves(
        "The field flour_g is given twice: give it once.", "--set", "flour_g=1000", "--set", "flour_oz=35");

    [Fact]
    public void A_text_of_two_lines_is_refused() => RefusesAndLeaves(
        "The text for baker has a line break in it: a cell holds one line, write a blank instead.", "--set", "baker=Dov\nand Mirre");

    [Fact]
    public void Options_without_a_value_or_with_a_wrong_one_are_refused()
    {
        RefusesAndLeaves("--set baker has no value: write --set name=value.", "--set", "baker");
        RefusesAndLeaves("--set has no value: write one after it.", "--set");
        RefusesAndLeaves("There are no units stones: say metric or us.", "--units", "stones", "--set", "baker=Dov");
    }

    [Fact]
    public void Without_a_terminal_and_without_fields_nothing_is_asked() => RefusesAndLeaves(
        "Questions need a terminal, and this is none: give each field with --set field=value.");

    [Fact]
    public void A_journal_that_is_not_there_is_refused_with_how_to_start_one()
    {
        Command.Run("add", "nowhere", "--set", "baker=Dov")
            .Refuses("nowhere: There is no such file or folder. Check the spelling, or start a journal with 'bakeinsights new'.");
        Command.Run("add", " ", "--set", "baker=Dov").Refuses("The journal's name is blank: give a folder, or a CSV file of bakes.");
    }

    [Fact]
    public void A_text_that_a_spreadsheet_would_run_is_marked_and_read_without_the_mark()
    {
        Add("--set", "baked_on=2026-11-03", "--set", "baker==Dov");
        Assert.EndsWith("ML-47,2026-11-03,'=Dov,,,,\n", File.ReadAllText(_file), StringComparison.Ordinal);
        Assert.Equal("=Dov", Journal.Read(_file).Bakes[^1][BakeColumns.Baker]);
    }

    [Fact]
    public void The_first_bake_of_a_new_journal_has_no_name_to_follow()
    {
        var journal = _folder.File("mine");
        Command.Run("new", journal);
        var add = Command.Run("add", journal, "--set", "baked_on=2026-11-03");
        Assert.EndsWith($"Added bakes:2 to {Path.Combine(journal, "bakes.csv")}, line 2.{Environment.NewLine}", add.Out, StringComparison.Ordinal);
        Assert.Equal(0, Command.Run("check", journal).Status);
    }

    [Theory]
    [InlineData("de-DE")]
    [InlineData("tr-TR")]
    [InlineData("ar-SA")]
    public void What_is_printed_and_written_is_the_same_in_every_culture(string culture)
    {
        string[] arguments = ["add", _file, "--units", "us", "--set", "BAKED_ON=2026-11-03", "--set", "DOUGH_TEMP=76.5", "--set", "rise_min=90"];
        var usual = Command.RunUnder("en-US", arguments);
        var written = File.ReadAllText(_file);
        _folder.Write("bakes.csv", Header + First);
        Assert.Equal(usual, Command.RunUnder(culture, arguments));
        Assert.Equal(written, File.ReadAllText(_file));
    }

    private Command Add(params string[] arguments) => Command.Run(["add", _file, .. arguments]);

    private void RefusesAndLeaves(string line, params string[] arguments)
    {
        Add(arguments).Refuses(line);
        Assert.Equal(Header + First, File.ReadAllText(_file));
        Assert.Equal([_file], Directory.GetFileSystemEntries(_folder.Path));
    }
}
