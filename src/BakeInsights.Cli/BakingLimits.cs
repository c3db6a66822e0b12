namespace BakeInsights.Cli;

/// <summary>The ranges of settings that several commands take.</summary>
internal static class BakingLimits
{
    // Doughs outside of this are no bread doughs, or no doughs: common practice, no source.
    private const double LeastHydration = 40;
    private const double MostHydration = 120;
    private const double LeastYeast = 0.05;
    private const double MostYeast = 5;
    private static readonly Temperature Coldest = Temperature.FromC(5);
    private static readonly Temperature Warmest = Temperature.FromC(40);

    /// <summary>Hydrations, in percent.</summary>
    public static SettingLimits? Hydration(string? text) => LimitsOption.Read("hydration", text, LeastHydration, MostHydration, "60-72");

    /// <summary>Yeast, in percent of flour as instant.</summary>
    public static SettingLimits? Yeast(string? text) => LimitsOption.Read("yeast", text, LeastYeast, MostYeast, "0.6-1.4");

    /// <summary>Dough temperatures, written in the units that people read; in °C.</summary>
    public static SettingLimits? DoughTemperature(string? text, UnitSystem units)
    {
        var isUs = units == UnitSystem.Us;
        var asked = LimitsOption.Read(
            "dough-temp", text, isUs ? Coldest.F : Coldest.C, isUs ? Warmest.F : Warmest.C, isUs ? "72-80" : "22-27");
        return asked is { } limits && isUs ? new SettingLimits(Temperature.FromF(limits.Low).C, Temperature.FromF(limits.High).C) : asked;
    }
}
