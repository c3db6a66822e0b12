namespace BakeInsights;

/// <summary>How baker's yeast is sold. A levain is a preferment, not a kind of yeast.</summary>
public enum YeastKind
{
    /// <summary>Compressed yeast, about 69 % water.</summary>
    Fresh,

    /// <summary>Dry granules that are woken in water first.</summary>
    ActiveDry,

    /// <summary>Fine dry granules that go straight into the flour.</summary>
    Instant,
}
