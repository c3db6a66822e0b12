namespace BakeInsights;

/// <summary>One remark of the reader about a journal: where, what, how grave, and what to do.</summary>
/// <param name="File">The file's name, without its folder.</param>
/// <param name="Line">The line of the file, counted from 1, the header's line included.</param>
/// <param name="Column">The column's name as the header has it; empty when the remark is about the whole row.</param>
/// <param name="Code">A short fixed name of the kind of remark, for programs.</param>
/// <param name="Gravity">What it means for the row or cell.</param>
/// <param name="Text">The text as it stands in the file.</param>
/// <param name="Message">What is odd about it.</param>
/// <param name="Remedy">What its author can do.</param>
public sealed record Notice(
    string File, long Line, string Column, string Code, Gravity Gravity, string Text, string Message, string Remedy);
