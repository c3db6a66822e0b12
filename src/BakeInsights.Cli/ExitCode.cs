namespace BakeInsights.Cli;

/// <summary>What the command tells its caller when it ends.</summary>
internal static class ExitCode
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Done, but rows of the journal were set aside.</summary>
    public const int RowsSetAside = 1;

    /// <summary>Could not be done; one line on standard error says why and what to do.</summary>
    public const int Failed = 2;
}
