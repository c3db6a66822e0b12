namespace BakeInsights;

/// <summary>How one invented dough really rises, and how it is read.</summary>
/// <param name="BakeId">The bake of the demo month.</param>
/// <param name="Stage">Which rise.</param>
/// <param name="Curve">Its curve.</param>
/// <param name="StartSize">The size it starts from, in mm or mL.</param>
/// <param name="IsHeight">Whether heights are read, in mm, or volumes, in mL.</param>
/// <param name="EveryMin">Minutes between readings, from 0 on.</param>
/// <param name="LastMin">The minute of the last reading.</param>
/// <param name="CollapsesAfterMin">The minute after which the dough sinks; null for one that stands.</param>
public sealed record DemoRise(
    string BakeId,
    RiseStage Stage,
    RiseCurve Curve,
    double StartSize,
    bool IsHeight,
    int EveryMin,
    int LastMin,
    int? CollapsesAfterMin);
