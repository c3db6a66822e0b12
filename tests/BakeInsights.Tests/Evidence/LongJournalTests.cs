using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>A journal that is too long to keep its bakes, against the same bakes in memory.</summary>
public class LongJournalTests
{
    private const int Copies = JournalFit.KeptBakes / 40;

    private static readonly Lazy<(JournalFit Long, IReadOnlyList<Bake> Kept)> Both = new(Read);

    [Fact]
    public void The_coefficients_are_those_of_the_bakes_in_memory()
    {
        var rise = RiseTime.Ask(Both.Value.Kept).Value;
        var volume = LoafVolume.Ask(Both.Value.Kept).Value;
        Same(rise.Terms, Both.Value.Long.RiseTime.Value.Terms);
        Same(volume.Terms, Both.Value.Long.LoafVolume.Value.Terms);
        Near(volume.BestHydration!.Low!.Value, Both.Value.Long.LoafVolume.Value.BestHydration!.Low!.Value);
        Near(rise.ResidualSd, Both.Value.Long.RiseTime.Value.ResidualSd);
        Near(volume.RSquared, Both.Value.Long.LoafVolume.Value.RSquared);
    }

    [Fact]
    public void Bakes_left_out_are_counted_with_the_same_reasons()
    {
        var kept = RiseTime.Ask(Both.Value.Kept).Value;
        var answer = Both.Value.Long.RiseTime.Value;
        Assert.True(answer.IsFromSums);
        Assert.Empty(answer.Used);
        Assert.Equal(kept.UsedCount, answer.UsedCount);
        Assert.Equal(
            kept.LeftOutBakes.Select(left => (left.Reason, left.Count)), answer.LeftOutBakes.Select(left => (left.Reason, left.Count)));
        Assert.All(answer.LeftOutBakes, left => Assert.Empty(left.Bakes));
    }

    [Fact]
    public void Every_notice_is_counted_and_the_first_twenty_of_each_code_are_kept()
    {
        var reading = Both.Value.Long.Reading;
        Assert.Equal(Copies, reading.NoticeCounts["DATE_UNREAD"]);
        Assert.Equal(Copies, reading.SetAside);
        Assert.Equal(
            Enumerable.Range(0, 20).Select(copy => 32L + (46 * copy)),
            reading.Notices.Where(notice => notice.Code == "DATE_UNREAD").Select(notice => notice.Line));
    }

    [Fact]
    public void The_answer_says_that_it_rests_on_sums()
    {
        Assert.Contains(
            "The journal is too long to keep its bakes: it has more than 50000, which went into running sums. The terms are those "
                + "that every tenth of the first bakes supports, the typical dough is the mean, and no single bake was looked at. "
                + "No group, flour or baker has a level of its own.",
            Both.Value.Long.RiseTime.Value.Caveats);
        var error = Assert.Throws<InvalidOperationException>(() => Both.Value.Long.RiseTime.Value.Fit);
        Assert.Equal("The answer rests on running sums, and the single bakes are gone.", error.Message);
    }

    [Fact]
    public void A_short_journal_gives_the_answers_of_the_bakes_in_memory()
    {
        var path = Repository.Path("data-demo/millpond-lane");
        var fit = JournalFit.Of(path);
        var bakes = Journal.Read(path).Bakes;
        Assert.False(fit.RiseTime.Value.IsFromSums);
        Assert.Equal(RiseTime.Ask(bakes).Value.Terms, fit.RiseTime.Value.Terms);
        Assert.Equal(LoafVolume.Ask(bakes).Value.Terms, fit.LoafVolume.Value.Terms);
        Assert.Equal(
            RiseTime.Ask(bakes).Value.LeftOutBakes.SelectMany(left => left.Bakes.Select(bake => bake.Id)),
            fit.RiseTime.Value.LeftOutBakes.SelectMany(left => left.Bakes.Select(bake => bake.Id)));
    }

    // The demo month over and over, each time with other names: more bakes than are kept, some of them lacking something.
    // Its bakers have no name, as running sums give them no level of their own.
    private static (JournalFit Long, IReadOnlyList<Bake> Kept) Read()
    {
        var lines = File.ReadAllLines(Repository.Path("data-demo/millpond-lane/bakes.csv"));
        using var folder = new TemporaryFolder();
        var path = folder.Write(
            "bakes.csv",
            string.Join('\n', [lines[0], .. Enumerable.Range(0, Copies).SelectMany(copy => lines.Skip(1).Select(line => $"{copy}-{WithoutBaker(line)}"))]));
        var kept = Journal.Read(path).Bakes;
        Assert.True(kept.Count > JournalFit.KeptBakes);
        return (JournalFit.Of(path), kept);
    }

    private static string WithoutBaker(string line) => string.Join(',', line.Split(',').Select((cell, column) => column == 2 ? "" : cell));

    private static void Same(IReadOnlyList<AnswerTerm> expected, IReadOnlyList<AnswerTerm> actual)
    {
        Assert.Equal(expected.Select(term => (term.Name, term.Unit)), actual.Select(term => (term.Name, term.Unit)));
        foreach (var (one, other) in expected.Zip(actual))
        {
            Near(one.Coefficient.Estimate, other.Coefficient.Estimate);
            Near(one.Coefficient.StandardError, other.Coefficient.StandardError);
        }
    }

    private static void Near(double expected, double actual) => Assert.Equal(1, actual / expected, 1e-9);
}
