namespace BakeInsights;

/// <summary>The units that people read. Journals and results stay in canonical units whatever is chosen here.</summary>
public enum UnitSystem
{
    /// <summary>°C, g, mL, mL/g.</summary>
    Metric,

    /// <summary>US customary: °F, oz, cubic inches, cubic inches an ounce.</summary>
    Us,
}
