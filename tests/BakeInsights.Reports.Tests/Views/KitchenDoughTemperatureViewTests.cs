using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Reports.Tests;

/// <summary>The demo kitchen's dough temperature in words, tables and a chart.</summary>
public class KitchenDoughTemperatureViewTests
{
    private static readonly KitchenDoughTemperature Learned = KitchenDoughTemperature.Learn(Demo.Journal.Bakes).Value;

    [Theory]
    [InlineData(UnitSystem.Metric)]
    [InlineData(UnitSystem.Us)]
    public void The_demo_kitchen_reads_as_approved(UnitSystem units)
    {
        var text = Written(units, view => view.ToText());
        Assert.All(text.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Approved.Matches($"tests/BakeInsights.Reports.Tests/Approved/kitchen-dough-{units.ToString().ToLowerInvariant()}.txt", text);
    }

    private static string Written(UnitSystem units, Func<View, string> write)
    {
        var conditions = new MixingConditions(Temperature.FromC(20), Temperature.FromC(21)) { MixMin = 8 };
        var kitchen = new KitchenWater(Temperature.FromC(16), Temperature.FromC(50), 100);
        var hot = new MixingConditions(Temperature.FromC(29), Temperature.FromC(31));
        return string.Join("\n", new[]
        {
            KitchenDoughTemperatureView.Of(Learned, Demo.Journal.Bakes.Count, units),
            KitchenDoughTemperatureView.Of(Learned.WaterFor(Temperature.FromC(24), conditions, kitchen, 650), units),
            KitchenDoughTemperatureView.Of(Learned.WaterFor(Temperature.FromC(23), hot, kitchen, 650), units),
            KitchenDoughTemperatureView.Of(KitchenDoughTemperature.Learn([]), 0, units),
        }.Select(write));
    }
}
