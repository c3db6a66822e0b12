using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

/// <summary>The built command, started as a user starts it.</summary>
internal static class BakeCommand
{
    /// <summary>Debug or Release: that of these tests.</summary>
    public static string Configuration { get; } =
        new DirectoryInfo(AppContext.BaseDirectory.TrimEnd(Path.DirectorySeparatorChar)).Parent!.Name;

    private static string Program { get; } =
        Repository.Path($"src/BakeInsights.Cli/bin/{Configuration}/net10.0/BakeInsights.Cli.dll");

    /// <summary>The program and its arguments, for a test that starts the command in a way of its own.</summary>
    public static string[] Line(params string[] arguments) => ["dotnet", Program, .. arguments];

    /// <summary>Starts the command in a folder.</summary>
    public static Task<Started> RunAsync(string folder, params string[] arguments) =>
        Started.RunAsync("dotnet", [Program, .. arguments], folder);

    /// <summary>Starts the command in a folder for a user of another language.</summary>
    public static Task<Started> RunAsAsync(string locale, string folder, params string[] arguments) =>
        Started.RunAsync("dotnet", [Program, .. arguments], folder, new Dictionary<string, string> { ["LC_ALL"] = locale });

    /// <summary>Runs a notebook and gives the path of what was written.</summary>
    public static async Task<string> RunNotebookAsync(string notebook, TemporaryFolder folder, string extension)
    {
        var target = folder.File(Path.GetFileNameWithoutExtension(notebook) + extension);
        if (!File.Exists(target))
        {
            var run = await RunAsync(folder.Path, "run", Repository.Path(notebook), "--to", target);
            Assert.True(run.ExitCode == 0, run.Errors);
        }

        return target;
    }
}
