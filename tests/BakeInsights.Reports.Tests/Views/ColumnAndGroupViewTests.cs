using BakeInsights.Inference;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Reports.Tests;

/// <summary>Answers about columns and groups as they are read.</summary>
public class ColumnAndGroupViewTests
{
    private static readonly IReadOnlyList<Bake> Bromate = BakeInsights.Journal.Read(Repository.ReferenceData("bread/bromate-journal.csv")).Bakes;
    private static readonly IReadOnlyList<Bake> Benches = BakeInsights.Journal.Read(Repository.ReferenceData("r/benches.csv")).Bakes;

    internal static Attempt<ColumnAnswer> Column(ColumnForm form) =>
        ColumnQuestion.Ask(Bromate, ColumnMeasure.Of("loaf_volume_ml"), "bromate_mg", form, ["flour_kind"]);

    internal static Attempt<GroupAnswer> Groups(int groups = 5) => GroupQuestion.Ask(
        [.. Benches.Where(bake => groups > 2 || bake[BakeColumns.Group] is "ash" or "fir")], Measures.RiseTime);

    internal static Attempt<ColumnAnswer> Temperature { get; } = ColumnQuestion.Ask(Benches, Measures.RiseTime, "dough_temp_c", ColumnForm.Line, ["group"]);

    [Theory]
    [InlineData(UnitSystem.Metric)]
    [InlineData(UnitSystem.Us)]
    public void Answers_read_as_approved_within_eighty_columns(UnitSystem units)
    {
        var text = string.Join(
            "\n",
            new[]
            {
                ColumnView.Of(Column(ColumnForm.Levels), 85, units),
                ColumnView.Of(Column(ColumnForm.Curve), 85, units),
                ColumnView.Of(Temperature, 25, units),
                ColumnView.Of(ColumnQuestion.Ask(Benches, Measures.RiseTime, "steamed", ColumnForm.Levels), 25, units),
                GroupView.Of(Groups(), 25, units),
                GroupView.Of(Groups(2), 11, units),
            }.Select(view => view.ToText()));

        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Approved.Matches($"tests/BakeInsights.Reports.Tests/Approved/columns-{units.ToString().ToLowerInvariant()}.txt", text);
    }

    [Fact]
    public void Names_of_groups_are_encoded_in_HTML()
    {
        var bakes = Enumerable.Range(0, 12).Select(i => new BakeDraft($"B{i}", new DateOnly(2026, 10, 1 + i))
            .Set(BakeColumns.Rise, 90 + (i * 7 % 5)).Set(BakeColumns.Group, i % 2 == 0 ? "<b>north" : "south").Finish(new SourceLine("bakes.csv", i + 2))).ToList();
        var html = GroupView.Of(GroupQuestion.Ask(bakes, Measures.RiseTime), 12, UnitSystem.Metric).ToHtml();
        Assert.DoesNotContain("<b>north", html, StringComparison.Ordinal);
        Assert.Contains("&lt;b&gt;north", html, StringComparison.Ordinal);
    }
}
