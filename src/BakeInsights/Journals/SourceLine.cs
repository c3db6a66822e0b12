namespace BakeInsights;

/// <summary>Where a bake was written down.</summary>
/// <param name="File">The file's name, without its folder.</param>
/// <param name="Line">The line of the file, counted from 1, the header's line included.</param>
public sealed record SourceLine(string File, long Line);
