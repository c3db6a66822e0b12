using System.Text;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Journals with bytes flipped, cut and put in at random: every row is accounted for, whatever it holds.</summary>
public class DamagedJournalTests
{
    private static readonly long Many = Damage.Files(2_000);

    private const string Header = "bake_id,baked_on,flour_g,flour_measure,water_g,yeast_tsp,yeast_kind,dough_temp_f,mixed_at,rise_h,mine,notes\n";

    private const string Rows = """
        a,2026-10-01,500,weighed,325,1,instant,76,19:40,1.5,top,fine
        b,2026-10-02,4 cups,spooned,1.5 cups,1.5,active_dry,24 °C,7:05,95 min,,"dark, crisp"
        ,2026-10-03,18 oz,,320,2 g,,78,,2,low,"a ""good"" one"

        c,2026-10-04,510,sifted,12 oz,1,fresh,,,,,
        c,2026-10-05,,,,,,,,,,
        d,soon,500,weighed,325,1,instant,76,19:40,1.5,top,été
        ,,,,,,,,,,,
        e,2026-10-07,5000000,wild,x,,,900,25:00,-1,,12" tin
        f,2026-10-08,500
        g,2026-10-09,500,weighed,325,1,instant,76,19:40,1.5,top,fine,more,and more

        """;

    private static readonly Gen<Func<byte[], byte[]>[]> Damages = Damage.Any;

    [Fact]
    public void Rows_read_are_the_bakes_kept_and_the_rows_refused() => Damages.Sample(damages =>
    {
        var rows = Damage.Apply(damages, Encoding.UTF8.GetBytes(Rows));
        if (rows.Any(IsNoLetter))
        {
            return;
        }

        var journal = Csv.ReadBytes([.. Encoding.UTF8.GetBytes(Header), .. rows]);

        // Latin-1 gives each byte a letter, so that lines can be counted in what is no longer UTF-8.
        var lines = Encoding.Latin1.GetString(rows).Split('\n', '\r').Count(line => line.Length > 0);
        Assert.Equal(lines, journal.Rows);
        Assert.Equal(journal.Rows, journal.Bakes.Count + journal.Notices.Count(notice => notice.Gravity == Gravity.Refused));
        Assert.Equal(journal.Bakes.Count, journal.Bakes.Select(bake => bake.Id).Distinct().Count());
    }, iter: Many);

    [Fact]
    public void Damage_anywhere_in_the_file_is_read_or_refused_with_a_reason() => Damages.Sample(damages =>
    {
        try
        {
            var journal = Csv.ReadBytes(Damage.Apply(damages, Encoding.UTF8.GetBytes(Header + Rows)));
            Assert.Equal(journal.SetAside, journal.Notices.Count(notice => notice.Gravity == Gravity.Refused));
        }
        catch (JournalFileException refused)
        {
            Assert.NotEmpty(refused.Remedy);
        }
    }, iter: Many);

    [Fact]
    public void What_was_read_of_a_damaged_journal_is_inside_its_ranges() => Damages.Sample(damages =>
    {
        var rows = Damage.Apply(damages, Encoding.UTF8.GetBytes(Rows)).Where(each => !IsNoLetter(each));
        var journal = Csv.ReadBytes([.. Encoding.UTF8.GetBytes(Header), .. rows]);
        foreach (var bake in journal.Bakes)
        {
            Assert.All(
                BakeColumns.All.OfType<QuantityColumn>(),
                column => Assert.True(bake[column] is null || (bake[column] >= column.Low && bake[column] <= column.High)));
            Assert.All(Measures.All, measure => Assert.True(measure.Of(bake) is null || double.IsFinite(measure.Of(bake)!.Value)));
        }
    }, iter: Many);

    // A file with NUL in it is refused whole, and so is one that is neither UTF-8 nor, by these bytes, Windows-1252.
    private static bool IsNoLetter(byte octet) => octet is 0 or 0x81 or 0x8D or 0x8F or 0x90 or 0x9D;
}
