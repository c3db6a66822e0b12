using Xunit;

namespace BakeInsights.Tests;

/// <summary>The files of a journal beside the bakes, and what the bakes take from them.</summary>
public class SideFilesTests
{
    private static readonly (string, string[]) Bakes = ("bakes.csv", ["bake_id,baked_on", "a,2026-10-01", "b,2026-10-02"]);

    public static TheoryData<Type, JournalColumn> Enumerations => new()
    {
        { typeof(AttributeKind), AttributeColumns.Kind },
        { typeof(RiseStage), RiseColumns.Stage },
    };

    [Fact]
    public void Every_file_of_the_journal_is_read_into_its_records()
    {
        var journal = Csv.ReadFolder(
        [
            Bakes,
            ("loaves.csv", ["bake_id,loaf,piece_g,loaf_g,loaf_volume_ml,loaf_height_in,lot", "a,1,900,800,2600,4,x"]),
            ("attributes.csv", ["attribute,low,high,kind", "crumb,1,9,middle_is_best"]),
            ("scores.csv", ["bake_id,loaf,judge,attribute,score", "a,1,J1,crumb,7"]),
            ("rise.csv", ["bake_id,stage,minutes,height_mm,volume_ml,dough_temp_f", "a,rise,1 h 15 min,60,,77"]),
            ("probe.csv", ["bake_id,minutes,place,temp_c", "b,10,crumb,93.5"]),
            ("cups.csv", ["measurer,ingredient,method,cup,mass_g", "M1,flour,scooped,red,141", "M1,flour,scooped,red,141"]),
            ("formulas.csv", ["formula,ingredient,percent,amount", "house,water,65,", "house,honey,,1 oz"]),
        ]);

        Assert.DoesNotContain(journal.Notices, notice => notice.Gravity > Gravity.Noted);
        var loaf = Assert.Single(journal.Loaves);
        Assert.Equal(("a", "1", 900, 800, 2600), (loaf.BakeId, loaf.Name, loaf.PieceG, loaf.LoafG, loaf.VolumeMl));
        Assert.Equal(101.6, loaf.HeightMm!.Value, 1e-9); // four inches of 25.4 mm
        Assert.Equal([KeyValuePair.Create("lot", "x")], loaf.OwnColumns);
        Assert.Equal(new SourceLine("loaves.csv", 2), loaf.Origin);
        var attribute = Assert.Single(journal.Attributes);
        Assert.Equal(("crumb", 1, 9, AttributeKind.MiddleIsBest), (attribute.Name, attribute.Low, attribute.High, attribute.Kind));
        var score = Assert.Single(journal.Scores);
        Assert.Equal(("a", "1", "J1", "crumb", 7), (score.BakeId, score.Loaf, score.Judge, score.Attribute, score.Value));
        var rise = Assert.Single(journal.RiseReadings);
        Assert.Equal(("a", RiseStage.Rise, 75, 60, null, 25), (rise.BakeId, rise.Stage, rise.Minutes, rise.HeightMm, rise.VolumeMl, rise.DoughTempC));
        var probe = Assert.Single(journal.TemperatureReadings);
        Assert.Equal(("b", 10, "crumb", 93.5), (probe.BakeId, probe.Minutes, probe.Place, probe.TempC));
        Assert.Equal(2, journal.Cups.Count);
        var cup = journal.Cups[0];
        Assert.Equal(("M1", "flour", FlourMeasure.Scooped, "red", 141), (cup.Measurer, cup.Ingredient, cup.Method, cup.Cup, cup.MassG));
        Assert.Equal([(65, null), (null, 28.3495)], journal.FormulaIngredients.Select(line => (line.Percent, Rounded(line.AmountG))));
    }

    [Fact]
    public void Rows_of_every_file_are_those_kept_and_those_set_aside()
    {
        var journal = Csv.ReadFolder(
        [
            Bakes,
            ("loaves.csv", ["bake_id,loaf,loaf_g", "a,1,800", "a,1,810", "c,1,800", ",,", "a,2,heavy", "b,\"1,800", "b,,800"]),
            ("scores.csv", ["bake_id,attribute,score", "a,crumb,7", "a,crumb,", "a,crumb,good", "b,crumb,8"]),
        ]);

        Assert.Equal(
            [
                new JournalFile("bakes.csv", JournalFileKind.Bakes, 2, 2),
                new JournalFile("loaves.csv", JournalFileKind.Loaves, 7, 2),
                new JournalFile("scores.csv", JournalFileKind.Scores, 4, 2),
            ],
            journal.Files);
        Assert.All(journal.Files, file => Assert.Equal(
            file.SetAside, journal.Notices.Count(notice => notice.File == file.Name && notice.Gravity == Gravity.Refused)));
        Assert.Equal(2, journal.Rows);
    }

    [Fact]
    public void Rows_before_the_place_where_a_file_can_not_be_read_any_further_stay()
    {
        var journal = Csv.ReadFolder(
            [Bakes, ("loaves.csv", ["bake_id,loaf", "a,1", "z,1", .. Enumerable.Repeat("", 200_000), "b," + new string('x', 1 << 22)])]);

        Assert.Equal(new JournalFile("loaves.csv", JournalFileKind.Loaves, 2, 1), journal.Files[1]);
        Assert.Equal(["FILE_UNREAD", "BAKE_UNKNOWN"], journal.Notices.Where(notice => notice.File == "loaves.csv").Select(notice => notice.Code));
        Assert.Single(journal.Loaves);
    }

    [Fact]
    public void Bakes_alone_have_no_other_records()
    {
        var journal = Csv.ReadFolder([Bakes]);

        Assert.Equal(
            (0, 0, 0, 0, 0, 0, 0, 1),
            (journal.Loaves.Count, journal.Attributes.Count, journal.Scores.Count, journal.RiseReadings.Count,
                journal.TemperatureReadings.Count, journal.Cups.Count, journal.FormulaIngredients.Count, journal.Files.Count));
    }

    [Fact]
    public void Rows_belong_to_bakes_of_any_file_of_the_folder()
    {
        var journal = Csv.ReadFolder(
        [
            ("bakes-1.csv", ["bake_id,baked_on", "a,2026-09-01"]), ("bakes-2.csv", ["bake_id,baked_on", "b,2026-10-01"]),
            ("loaves.csv", ["bake_id,loaf", "b,1", "a,1"]),
        ]);

        Assert.Equal(["b", "a"], journal.Loaves.Select(loaf => loaf.BakeId));
    }

    [Fact]
    public void File_of_loaves_in_another_form_is_read_like_one_of_bakes()
    {
        var journal = Csv.ReadFolder([Bakes, ("loaves.csv", ["bake_id;loaf;loaf_g", "a;1;800,5"])]);

        Assert.Equal(800.5, journal.Loaves.Single().LoafG);
        Assert.Contains(journal.Notices, notice => (notice.File, notice.Code) == ("loaves.csv", "FILE_FORM"));
    }

    [Fact]
    public void Empty_columns_of_a_bake_are_the_number_and_the_means_of_its_loaves()
    {
        var journal = Csv.ReadFolder(
        [
            ("bakes.csv", ["bake_id,baked_on,loaf_count,loaf_g", "a,2026-10-01,,", "b,2026-10-02,2,700", "c,2026-10-03,,"]),
            ("loaves.csv", ["bake_id,loaf,loaf_g,loaf_volume_ml", "a,1,800,2600", "a,2,810,", "a,3,,2800", "b,1,1,2000", "b,2,1,2100"]),
        ]);

        Assert.Equal(
            [(3, 805, 2700), (2, 700, 2050), (null, null, null)],
            journal.Bakes.Select(bake => (bake[BakeColumns.LoafCount], bake[BakeColumns.Loaf], bake[BakeColumns.LoafVolume])));
        Assert.Equal([2, 3], journal.Notices.Where(notice => notice.Code == "LOAVES_TAKEN").Select(notice => notice.Line));
    }

    [Fact]
    public void Without_a_column_of_judges_a_bake_has_one_score_of_an_attribute()
    {
        var journal = Csv.ReadFolder([Bakes, ("scores.csv", ["bake_id,attribute,score", "a,crumb,7", "a,crumb,8", "a,crust,8"])]);

        Assert.Equal([7, 8], journal.Scores.Select(score => score.Value));
        Assert.Equal("ROW_TWICE", journal.Notices.Single().Code);
    }

    [Fact]
    public void Scores_of_judges_who_are_not_named_are_no_copies()
    {
        var journal = Csv.ReadFolder([Bakes, ("scores.csv", ["bake_id,judge,attribute,score", "a,,crumb,7", "a,,crumb,7"])]);

        Assert.Equal(2, journal.Scores.Count);
    }

    [Theory]
    [MemberData(nameof(Enumerations))]
    public void Words_of_a_column_and_values_of_its_enumeration_stand_in_one_order(Type enumeration, JournalColumn column) => Assert.Equal(
        ((ChoiceColumn)column).Values.Select(word => word.Replace("_", "", StringComparison.Ordinal)),
        Enum.GetNames(enumeration).Select(name => name.ToLowerInvariant()));

    [Fact]
    public void Words_of_filling_are_those_of_the_bakes_but_for_weighing() => Assert.Equal(
        BakeColumns.FlourMeasure.Values.Skip((int)FlourMeasure.Spooned), CupColumns.Method.Values);

    private static double? Rounded(double? value) => value is { } known ? Math.Round(known, 4) : null;
}
