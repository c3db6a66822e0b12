using System.Diagnostics;

namespace BakeInsights.EndToEnd.Tests;

/// <summary>A program that was started and has ended.</summary>
internal sealed record Started(int ExitCode, string Output, string Errors)
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(10);

    /// <summary>The lines on standard error.</summary>
    public string[] ErrorLines => Errors.Split('\n', StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Starts a program and waits for its end.</summary>
    public static async Task<Started> RunAsync(
        string program, IEnumerable<string> arguments, string folder, IReadOnlyDictionary<string, string>? environment = null)
    {
        var start = new ProcessStartInfo(program, arguments)
        {
            WorkingDirectory = folder,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var (name, value) in environment ?? new Dictionary<string, string>())
        {
            start.Environment[name] = value;
        }

        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{program} did not start.");
        using var limit = new CancellationTokenSource(Patience);
        var output = process.StandardOutput.ReadToEndAsync(limit.Token);
        var errors = process.StandardError.ReadToEndAsync(limit.Token);
        try
        {
            await process.WaitForExitAsync(limit.Token);
            return new Started(process.ExitCode, await output, await errors);
        }
        catch (OperationCanceledException)
        {
            process.Kill(entireProcessTree: true);
            throw new TimeoutException($"{program} had not ended after {Patience}.");
        }
    }
}
