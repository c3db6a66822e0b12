using System.Diagnostics;
using System.Runtime.Versioning;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.EndToEnd.Tests;

/// <summary><c>add</c> as a process: two at once, killed at any moment, on a full disk, without permission.</summary>
public sealed class AddCommandTests : IDisposable
{
    private const string Header = "bake_id,baked_on,notes\n";
    private const int Kills = 12;

    private readonly TemporaryFolder _folder = new();
    private readonly string _file;

    public AddCommandTests() => _file = _folder.Write("bakes.csv", Header + "A-1,2026-10-01,\n");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public async Task Several_at_once_all_arrive()
    {
        var runs = await Task.WhenAll(Add("notes=one"), Add("notes=two"), Add("notes=three"), Add("notes=four"));
        Assert.All(runs, run => Assert.Equal((0, ""), (run.ExitCode, run.Errors)));
        var lines = await File.ReadAllLinesAsync(_file);
        Assert.Equal([Header.TrimEnd(), "A-1,2026-10-01,"], lines[..2]);
        Assert.Equal(["A-2", "A-3", "A-4", "A-5"], lines[2..].Select(line => line.Split(',')[0]));
        Assert.Equal(["four", "one", "three", "two"], lines[2..].Select(line => line.Split(',')[2]).Order());
        Assert.Equal([_file], Directory.GetFileSystemEntries(_folder.Path));
    }

    [Fact]
    public async Task Killed_at_any_moment_the_journal_is_the_old_or_the_new()
    {
        // Long enough for writing to take a part of the run, and the last kills to come after its end.
        var old = Header + string.Concat(Enumerable.Range(1, 20_000).Select(i => $"A-{i},2026-10-01,a note of some length {i}\n"));
        _folder.Write("bakes.csv", old);
        var whole = Stopwatch.StartNew();
        Assert.Equal(0, (await Add("notes=first")).ExitCode);
        var duration = whole.Elapsed;
        for (var i = 1; i <= Kills; i++)
        {
            var before = await File.ReadAllTextAsync(_file);
            var line = BakeCommand.Line(Arguments($"notes=kill {i}"));
            using var process = Process.Start(new ProcessStartInfo(line[0], line[1..]) { WorkingDirectory = _folder.Path, RedirectStandardOutput = true })!;
            process.WaitForExit(duration * i / Kills);
            process.Kill();
            await process.WaitForExitAsync();
            var after = await File.ReadAllTextAsync(_file);
            Assert.True(
                after == before || (after.StartsWith(before, StringComparison.Ordinal) && after.EndsWith($",2026-11-03,kill {i}\n", StringComparison.Ordinal)),
                $"After kill {i} the file has {after.Length} characters instead of {before.Length}.");
        }

        // What the dead left behind is in nobody's way.
        Assert.Equal(0, (await Add("notes=last")).ExitCode);
        Assert.EndsWith(",2026-11-03,last\n", await File.ReadAllTextAsync(_file), StringComparison.Ordinal);
        Assert.Equal([_file], Directory.GetFileSystemEntries(_folder.Path));
    }

    // A limit for the process takes the disk's part: the copy comes to its end in the middle.
    [Fact]
    public async Task When_the_copy_finds_no_room_the_journal_stays()
    {
        var old = Header + string.Concat(Enumerable.Range(1, 35_000).Select(i => $"A-{i},2026-10-01,a note of some length\n"));
        _folder.Write("bakes.csv", old);
        var run = await Started.RunAsync(
            "sh",
            ["-c", "trap '' XFSZ; exec prlimit --fsize=1200000 \"$@\"", "sh", .. BakeCommand.Line(Arguments("notes=one"))],
            _folder.Path,
            new Dictionary<string, string> { ["DOTNET_EnableWriteXorExecute"] = "0" });
        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        Assert.Equal(
            "bakes.csv: The bake could not be added (The file would be longer than it may be). "
            + "See that the disk has room and is there. The journal is as it was.",
            Assert.Single(run.ErrorLines));
        Assert.Equal(old, await File.ReadAllTextAsync(_file));
        Assert.Equal([_file], Directory.GetFileSystemEntries(_folder.Path));
    }

    // Whoever may do anything is made to ask for permission like all others.
    [Fact]
    [UnsupportedOSPlatform("windows")]
    public async Task In_a_folder_that_may_not_be_written_the_journal_stays()
    {
        const UnixFileMode readOnly = UnixFileMode.UserRead | UnixFileMode.UserExecute;
        var usual = File.GetUnixFileMode(_folder.Path);
        File.SetUnixFileMode(_folder.Path, readOnly);
        try
        {
            string[] line = BakeCommand.Line(Arguments("notes=one"));
            var run = Environment.IsPrivilegedProcess
                ? await Started.RunAsync("setpriv", ["--bounding-set=-dac_override", .. line], _folder.Path)
                : await Started.RunAsync(line[0], line[1..], _folder.Path);
            Assert.Equal((2, ""), (run.ExitCode, run.Output));
            Assert.Equal(
                "bakes.csv: The bake can't be added: the file or its folder may not be written. Get the right to write there. The journal is as it was.",
                Assert.Single(run.ErrorLines));
            Assert.Equal(Header + "A-1,2026-10-01,\n", await File.ReadAllTextAsync(_file));
        }
        finally
        {
            File.SetUnixFileMode(_folder.Path, usual);
        }
    }

    private Task<Started> Add(string set) => BakeCommand.RunAsync(_folder.Path, Arguments(set));

    private static string[] Arguments(string set) => ["add", "bakes.csv", "--set", "baked_on=2026-11-03", "--set", set];
}
