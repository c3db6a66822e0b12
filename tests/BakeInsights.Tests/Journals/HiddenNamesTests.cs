using BakeInsights.TestKit;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

public class HiddenNamesTests
{
    private static readonly string[] Lines =
    [
        "bake_id,baked_on,baker,formula,judge,dov_score,notes",
        "Dov-1,2026-10-01,Anselma,lane loaf,Wim,4,\"DOV shaped it, anselma's oven\"",
        "b,2026-10-02,dov,Dov's own,Anselma,3,Dovetail and Dov Bar said so; wim agreed",
        "c,2026-10-03,Dov Bar,lane loaf,,,",
        "c,soon,DOV,,,,",
        "\"d,2026-10-04,Dov,,,,",
        "e,2026-10-05,Dov,,,,,Dov too",
    ];

    [Fact]
    public void Names_become_labels_in_the_order_of_their_first_appearance()
    {
        var journal = Csv.Read(Lines);
        var bakes = HiddenNames.Of(journal).In(journal).Bakes;

        Assert.Equal(["baker A", "baker B", "baker C", "baker B"], bakes.Select(bake => bake[BakeColumns.Baker]));
        Assert.Equal(["judge A", "baker A", null, null], bakes.Select(bake => bake.OwnColumns.GetValueOrDefault("judge")));
    }

    [Fact]
    public void Names_are_replaced_as_whole_words_in_any_case_in_every_text()
    {
        var journal = Csv.Read(Lines);
        var bakes = HiddenNames.Of(journal).In(journal).Bakes;

        Assert.Equal(["baker B-1", "b", "c", "e"], bakes.Select(bake => bake.Id));
        Assert.Equal("baker B shaped it, baker A's oven", bakes[0][BakeColumns.Notes]);
        Assert.Equal("Dovetail and baker C said so; judge A agreed", bakes[1][BakeColumns.Notes]);
        Assert.Equal("baker B's own", bakes[1][BakeColumns.Formula]);
        Assert.Equal("4", bakes[0].OwnColumns["baker B_score"]);
    }

    [Fact]
    public void Notices_have_labels_and_not_the_text_of_a_row()
    {
        var journal = Csv.Read(Lines);
        var notices = HiddenNames.Of(journal).In(journal).Notices;

        Assert.DoesNotContain(notices, notice => $"{notice}".Contains("dov", StringComparison.OrdinalIgnoreCase));
        Assert.Equal("baker B_score", notices.First(notice => notice.Code == "COLUMN_OWN" && notice.Column.Contains("score")).Text);
        Assert.Equal("(not shown)", notices.Single(notice => notice.Code == "QUOTE_UNCLOSED").Text);
        Assert.Equal("soon", notices.Single(notice => notice.Code == "DATE_UNREAD").Text);
    }

    [Fact]
    public void Names_of_the_journal_and_its_files_are_replaced()
    {
        using var folder = new TemporaryFolder();
        folder.Write("bakes-dov.csv", "bake_id,baked_on,baker\n,soon,Dov\n,2026-10-01,Dov\n");
        var journal = Journal.Read(folder.Path);
        var hidden = HiddenNames.Of(journal).In(journal with { Reading = journal.Reading with { Name = "dov 2026" } });

        Assert.Equal("baker A 2026", hidden.Name);
        Assert.Equal("bakes-baker A.csv", hidden.Notices.Single().File);
        Assert.Equal("bakes-baker A:3", hidden.Bakes.Single().Id);
    }

    [Fact]
    public void Numbers_words_and_days_stay()
    {
        var bake = Csv.Bake("baked_on,baker,flour_g,steam", "2026-10-01,yes,500,yes");
        var hidden = HiddenNames.Of(Csv.Read("baked_on,baker", "2026-10-01,yes")).In(bake);

        Assert.Equal((500.0, "yes", "baker A"), (hidden[BakeColumns.Flour]!.Value, hidden[BakeColumns.Steam], hidden[BakeColumns.Baker]));
        Assert.Equal("yes", bake[BakeColumns.Baker]);
    }

    [Fact]
    public void After_26_names_labels_have_two_letters()
    {
        var lines = Enumerable.Range(0, 30).Select(i => $"2026-10-01,person{i}").Prepend("baked_on,baker");

        var labels = HiddenNames.Of(Csv.Read([.. lines])).Labels;

        Assert.Equal(("baker Z", "baker AA", "baker AD"), (labels["person25"], labels["PERSON26"], labels["person29"]));
    }

    [Fact]
    public void No_word_of_any_text_is_a_name_afterwards() =>
        Gen.OneOf("Ann", "ann", "Bo", "Bob", " ", "-", "'s", "_", "x", ",", "é").Array[0, 20].Sample(pieces =>
        {
            var names = HiddenNames.Of(Csv.Read("baked_on,baker", "2026-10-01,Ann", "2026-10-01,Bo", "2026-10-01,bob"));
            var words = names.In(string.Concat(pieces)).Split(' ', '-', '\'', '_', ',');

            Assert.DoesNotContain(words, word => names.Labels.ContainsKey(word));
        });

    [Fact]
    public void Canonical_form_written_on_the_way_has_the_same_labels()
    {
        using var folder = new TemporaryFolder();
        var path = folder.Write("bakes.csv", string.Join('\n', Lines) + "\n");
        using var writer = new StringWriter();
        var reading = JournalReading.Of(path, writer, hidesNames: true);
        var journal = Journal.Read(path);
        var hidden = HiddenNames.Of(journal).In(journal);

        Assert.Equal(Csv.Canonical(hidden.Bakes), writer.ToString());
        Assert.Equal(hidden.Notices, reading.Notices);
    }
}
