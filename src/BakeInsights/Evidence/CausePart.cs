namespace BakeInsights;

/// <summary>How far the dough's temperature follows one of its causes: by physics, by the journal, and by both.</summary>
/// <remarks>
/// Parts of water, flour and room are degrees of dough for each degree of theirs, the same number in °F and in °C;
/// <c>mixing</c> is in °C a minute, and <c>warming</c> is the °C by which a dough gets warmer than water, flour and room
/// that are all at 24 °C, in 8 minutes of mixing.
/// </remarks>
/// <param name="Name">The cause: warming, water, flour, room, mixing.</param>
/// <param name="Title">The cause for people.</param>
/// <param name="Physics">What physics and trade figures say; the interval is one of 95 %, about twice as wide as their band.</param>
/// <param name="Source">Where that comes from.</param>
/// <param name="Journal">
/// What the journal says by itself, by least squares, causes that it can't tell held at what physics says; null if it
/// can't tell this one.
/// </param>
/// <param name="WhyNoJournal">Why it can't, one sentence; empty if it can.</param>
/// <param name="Together">What both say together.</param>
/// <param name="ConflictPValue">
/// The probability of a journal so far from physics, if both are right; null where it can't be known. Method:
/// <see cref="Inference.PriorFit.JointConflict"/>, for this cause by itself.
/// </param>
public sealed record CausePart(
    string Name,
    string Title,
    Estimate Physics,
    string Source,
    Estimate? Journal,
    string WhyNoJournal,
    Estimate Together,
    double? ConflictPValue)
{
    /// <summary>Whether physics and the journal disagree; then what both say together suits neither.</summary>
    public bool IsConflict => ConflictPValue < Inference.PriorConflict.Level;
}
