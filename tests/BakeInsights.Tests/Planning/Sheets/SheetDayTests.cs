using BakeInsights.TestKit;
using CsCheck;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>The day of a sheet: prediction, looks, fit, what would make it fit, and wishes that nothing can meet.</summary>
public class SheetDayTests
{
    private static readonly Journal Demo = Journal.Read(Repository.Path("data-demo/millpond-lane"));

    [Fact]
    public void Rise_is_the_fits_prediction_at_the_sheets_settings()
    {
        var sheet = One(new() { Bakes = [new() { Dough = Temperature.FromC(25), HydrationPct = 68, YeastPct = 0.8, SaltPct = 2 }] });
        var answer = RiseTime.Ask(Demo.Bakes).Value;
        var point = answer.At(answer.Typical
            .With(Measures.DoughTemperature, 25).With(Measures.Hydration, 68).With(Measures.Yeast, 0.8).With(Measures.Salt, 2));
        Assert.Equal(point.Estimate, sheet.Rise.Time.UsualMin, 1e-6);
        Assert.Equal(point.Prediction.Low, sheet.Rise.Time.SoonestMin, 1e-6);
        Assert.Equal(point.Prediction.High, sheet.Rise.Time.LatestMin, 1e-6);
        Assert.True(sheet.Rise.IsPredicted);
        Assert.True(sheet.LooksMin[0] < sheet.Rise.Time.SoonestMin);
        Assert.True(sheet.LooksMin[^1] >= sheet.Rise.Time.LatestMin);
    }

    [Fact]
    public void Water_is_the_kitchens_own_for_the_dough_wanted()
    {
        var sheet = One(new() { Kitchen = new() { Room = Temperature.FromC(25), Flour = Temperature.FromC(22) }, Bakes = [new() { Dough = Temperature.FromC(26) }] });
        var water = sheet.Formula.GramsOf(IngredientRole.Water);
        var expected = KitchenDoughTemperature.Learn(Demo.Bakes).Value
            .WaterFor(Temperature.FromC(26), new(Temperature.FromC(22), Temperature.FromC(25)), new(Temperature.FromC(15), Temperature.FromC(50), water), water).Value;
        Assert.Equal(expected.WaterC, sheet.Water.Value.WaterC);
        Assert.Equal(expected.Plan, sheet.Water.Value.Plan);
    }

    [Fact]
    public void Dough_that_the_taps_do_not_reach_rises_as_the_dough_that_comes()
    {
        var kitchen = new SheetKitchen { Cold = Temperature.FromC(14), Hot = Temperature.FromC(20) };
        var sheet = One(new() { Kitchen = kitchen, Bakes = [new() { Dough = Temperature.FromC(28) }] });
        Assert.False(sheet.Water.Value.Plan.IsReached);
        var reached = One(new() { Kitchen = kitchen, Bakes = [new() { Dough = Temperature.FromC(sheet.Water.Value.Dough.Estimate) }] });
        Assert.Equal(reached.Rise.Time.UsualMin, sheet.Rise.Time.UsualMin, 1e-6);
    }

    [Fact]
    public void Each_remedy_by_itself_makes_the_day_fit()
    {
        var finish = new TimeOnly(14, 0);
        var sheet = One(new() { Start = new(9, 0), FinishBy = finish });
        Assert.False(sheet.Day.Fit!.Fits);
        Assert.Equal([typeof(YeastRemedy), typeof(WarmthRemedy)], sheet.Day.Remedies.Select(remedy => remedy.GetType()));
        var yeast = sheet.Day.Remedies.OfType<YeastRemedy>().Single();
        var warmth = sheet.Day.Remedies.OfType<WarmthRemedy>().Single();
        foreach (var bake in new SheetBake[] { new() { YeastPct = yeast.YeastPct }, new() { Dough = warmth.Dough } })
        {
            var mended = One(new() { Start = new(9, 0), FinishBy = finish, Bakes = [bake] });
            Assert.True(mended.Day.Fit!.OverMin <= 0.5, $"{mended.Day.Fit.OverMin} min over");
        }

        Assert.Equal(yeast.YeastG, sheet.Formula.GramsOf(IngredientRole.Yeast) * yeast.Factor, 1e-9);
        Assert.True(warmth.Water.WaterC.Value > sheet.Water.Value.WaterC.Value);
    }

    [Fact]
    public void Day_without_a_clock_starts_at_nothing()
    {
        var sheet = One(new());
        Assert.False(sheet.Day.HasClock);
        Assert.Equal(0, sheet.Day.Table.StartMin);
    }

    [Fact]
    public void Class_has_a_sheet_for_each_bench_in_order()
    {
        SheetBake[] benches = [new() { Name = "window" }, SheetBake.Of("door", DoughSettings.MedianOf(Demo.Bakes).With(Measures.Hydration, 72))];
        var sheets = Sheets.Of(Demo, null, new() { Bakes = benches }, UnitSystem.Metric).Value;
        Assert.Equal(["window", "door"], sheets.Select(sheet => sheet.Name));
        Assert.Equal(72, sheets[1].Formula.HydrationPct, 1e-9);
    }

    [Fact]
    public void Milk_in_a_long_warm_rise_brings_its_caution()
    {
        Assert.DoesNotContain(CautionCatalogue.WarmHolds, One(new()).Cautions);
        using var folder = new TemporaryFolder();
        var file = folder.Write("bakes.csv", "baked_on,flour_g,water_g,milk_g,rise_min\n2026-10-05,1000,350,300,120\n");
        var sheet = Assert.Single(Sheets.Of(Journal.Read(file), null, new(), UnitSystem.Metric).Value);
        Assert.Contains(CautionCatalogue.WarmHolds, sheet.Cautions);
        Assert.All(new[] { CautionCatalogue.RawFlour, CautionCatalogue.Burns, CautionCatalogue.Allergens, CautionCatalogue.Cutting }, caution => Assert.Contains(caution, sheet.Cautions));
    }

    [Fact]
    public void Journal_without_a_fit_takes_its_bakes_as_they_were_and_says_so()
    {
        using var folder = new TemporaryFolder();
        var file = folder.Write("bakes.csv", "baked_on,flour_g,water_g,rise_min\n2026-10-05,1000,650,100\n2026-10-06,1000,650,80\n2026-10-07,1000,650,130\n");
        var rise = Assert.Single(Sheets.Of(Journal.Read(file), null, new(), UnitSystem.Metric).Value).Rise;
        Assert.Equal(new Duration(100, 80, 130), rise.Time);
        Assert.Equal((3, false), (rise.Bakes, rise.IsPredicted));
        Assert.Single(rise.Remarks);
    }

    [Fact]
    public void Whatever_is_wished_what_is_proposed_fits_and_the_looks_cover_the_rise() =>
        Gen.Select(Gen.Double[18, 31], Gen.Double[55, 80], Gen.Double[0.3, 2.5], Gen.Int[150, 420]).Sample(
            (dough, hydration, yeast, minutes) =>
            {
                var (start, finish) = (new TimeOnly(9, 0), new TimeOnly(9, 0).AddMinutes(minutes));
                var bake = new SheetBake { Dough = Temperature.FromC(dough), HydrationPct = hydration, YeastPct = yeast };
                if (!Sheets.Of(Demo, null, new() { Start = start, FinishBy = finish, Bakes = [bake] }, UnitSystem.Us).TryGet(out var sheets, out var problem))
                {
                    Assert.Equal(["finish_by"], problem.Columns);
                    return;
                }

                var sheet = Assert.Single(sheets);
                Assert.All(sheet.Day.Remedies, remedy => Assert.True(remedy.FinishLatestMin <= finish.ToTimeSpan().TotalMinutes + 0.5));
                Assert.All(sheet.Day.Table.Rows, row => Assert.True(row.SoonestMin <= row.UsualMin && row.UsualMin <= row.LatestMin));
                Assert.True(sheet.LooksMin[0] <= sheet.Rise.Time.SoonestMin && sheet.LooksMin[^1] >= sheet.Rise.Time.LatestMin);
                Assert.Equal(hydration, sheet.Formula.HydrationPct, 1e-6);
                Assert.Equal(yeast, sheet.Formula.YeastAsInstantPct, 1e-6);
            },
            iter: 40);

    private static Sheet One(SheetWishes wishes) => Assert.Single(Sheets.Of(Demo, null, wishes, UnitSystem.Metric).Value);
}
