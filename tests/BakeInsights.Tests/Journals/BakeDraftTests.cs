using Xunit;

namespace BakeInsights.Tests;

public class BakeDraftTests
{
    private static readonly SourceLine Nowhere = new("made.csv", 1);

    private static BakeDraft Draft => new("a", new DateOnly(2026, 10, 1));

    [Fact]
    public void Bake_does_not_change_with_its_draft()
    {
        var draft = Draft.Set(BakeColumns.Flour, 500).Set(BakeColumns.Notes, "first").Set(BakeColumns.Steam, "yes").Keep("lot", "1");
        var bake = draft.Finish(Nowhere);

        draft.Set(BakeColumns.Flour, 900).Set(BakeColumns.Notes, "second").Set(BakeColumns.Steam, "no").Keep("lot", "2");

        Assert.Equal(500, bake[BakeColumns.Flour]);
        Assert.Equal("first", bake[BakeColumns.Notes]);
        Assert.Equal("yes", bake[BakeColumns.Steam]);
        Assert.Equal("1", bake.OwnColumns["lot"]);
    }

    [Fact]
    public void Bake_of_which_only_name_and_day_are_known_has_nothing_else()
    {
        var bake = Draft.Finish(Nowhere);

        Assert.Equal(("a", new DateOnly(2026, 10, 1), Nowhere), (bake.Id, bake.BakedOn, bake.Origin));
        Assert.All(BakeColumns.All.OfType<QuantityColumn>(), column => Assert.Null(bake[column]));
        Assert.All(BakeColumns.All.OfType<ChoiceColumn>(), column => Assert.Null(bake[column]));
        Assert.All(BakeColumns.All.OfType<TextColumn>().Where(column => column != BakeColumns.Id), column => Assert.Null(bake[column]));
        Assert.False(bake.FlourByCup);
        Assert.Empty(bake.OwnColumns);
    }

    [Theory]
    [InlineData(-0.1)]
    [InlineData(50.1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Quantity_outside_its_range_is_a_programming_error(double celsius)
    {
        var failure = Assert.Throws<ArgumentOutOfRangeException>(() => Draft.Set(BakeColumns.DoughTemp, celsius));

        Assert.StartsWith("dough_temp_c goes from 0 to 50.", failure.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(50)]
    public void Ends_of_the_range_are_inside_it(double celsius) =>
        Assert.Equal(celsius, Draft.Set(BakeColumns.DoughTemp, celsius).Finish(Nowhere)[BakeColumns.DoughTemp]);

    [Fact]
    public void Word_that_the_column_does_not_know_is_a_programming_error()
    {
        var failure = Assert.Throws<ArgumentException>(() => Draft.Set(BakeColumns.YeastKind, "wild"));

        Assert.StartsWith("yeast_kind takes fresh, active_dry, instant, not 'wild'.", failure.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    public void Bake_without_a_name_is_a_programming_error(string id) =>
        Assert.Throws<ArgumentException>(() => new BakeDraft(id, new DateOnly(2026, 10, 1)));

    [Theory]
    [InlineData("")]
    [InlineData(" \t")]
    public void Name_of_a_bake_can_not_be_taken_away(string id)
    {
        var failure = Assert.Throws<ArgumentException>(() => Draft.Set(BakeColumns.Id, id));

        Assert.StartsWith("A bake has a name: its bake_id can't be blank.", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Blank_text_is_missing_and_blanks_around_a_text_are_not_kept()
    {
        var bake = Draft.Set(BakeColumns.Notes, " ").Set(BakeColumns.Baker, " Dov ").Keep("lot", "1").Keep("lot", "").Finish(Nowhere);

        Assert.Equal((null, "Dov"), (bake[BakeColumns.Notes], bake[BakeColumns.Baker]));
        Assert.Empty(bake.OwnColumns);
    }

    [Theory]
    [InlineData("")]
    [InlineData("flour_g")]
    [InlineData("Dough_Temp_F")]
    public void Own_column_can_not_have_a_known_name_or_none(string name)
    {
        var failure = Assert.Throws<ArgumentException>(() => Draft.Keep(name, "1"));

        Assert.StartsWith($"'{name}' can't be the name of a column of the journal's own.", failure.Message, StringComparison.Ordinal);
    }
}
