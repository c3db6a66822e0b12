namespace BakeInsights;

/// <summary>What a notice means for the row or cell it is about.</summary>
public enum Gravity
{
    /// <summary>For information; nothing was changed.</summary>
    Noted,

    /// <summary>Kept as written, and worth a second look.</summary>
    Doubted,

    /// <summary>The cell counts as missing; its row stays.</summary>
    Unread,

    /// <summary>The row is set aside.</summary>
    Refused,
}
