using System.Globalization;
using System.Reflection;
using System.Text.Json.Nodes;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Cli.Tests;

/// <summary>Tests that catch what the command prints; the console is one for the process, so they run one at a time.</summary>
[CollectionDefinition(nameof(Command), DisableParallelization = true)]
public class CommandCollection;

/// <summary>The command, run in this process through its own entry point.</summary>
/// <param name="Status">Its exit status.</param>
/// <param name="Out">What it printed.</param>
/// <param name="Error">What it printed on standard error.</param>
internal sealed record Command(int Status, string Out, string Error)
{
    /// <summary>The demo journal's folder.</summary>
    public static string Demo { get; } = Repository.Path("data-demo/millpond-lane");

    /// <summary>The document on standard output, which has to hold nothing else.</summary>
    public JsonNode Json => JsonNode.Parse(Out)!;

    /// <summary>Runs the command with these arguments.</summary>
    public static Command Run(params string[] arguments)
    {
        var (usualOut, usualError) = (Console.Out, Console.Error);
        using var output = new StringWriter(CultureInfo.InvariantCulture);
        using var error = new StringWriter(CultureInfo.InvariantCulture);
        Console.SetOut(output);
        Console.SetError(error);
        try
        {
            var status = (int)Assembly.Load("BakeInsights.Cli").EntryPoint!.Invoke(null, [arguments])!;
            return new Command(status, output.ToString(), error.ToString());
        }
        finally
        {
            Console.SetOut(usualOut);
            Console.SetError(usualError);
        }
    }

    /// <summary>Runs the command where this culture is the machine's.</summary>
    public static Command RunUnder(string culture, params string[] arguments)
    {
        var before = Thread.CurrentThread.CurrentCulture;
        Thread.CurrentThread.CurrentCulture = CultureInfo.GetCultureInfo(culture);
        try
        {
            return Run(arguments);
        }
        finally
        {
            Thread.CurrentThread.CurrentCulture = before;
        }
    }

    /// <summary>Checks that the command could not be done and said so in this one line, and nowhere else.</summary>
    public void Refuses(string line)
    {
        Assert.Equal(line + Environment.NewLine, Error);
        Assert.Equal("", Out);
        Assert.Equal(2, Status);
    }
}
