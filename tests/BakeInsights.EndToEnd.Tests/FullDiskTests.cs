using System.Globalization;
using BakeInsights.TestKit;
using Xunit;
using static BakeInsights.TestKit.NotebookText;

namespace BakeInsights.EndToEnd.Tests;

/// <summary>What writes, on a disk that is full: a small one in memory, seen by the command alone.</summary>
/// <remarks>
/// Where the system lets nobody mount, not even in a namespace of his own, the command meets the end of the space that
/// a process may write instead.
/// </remarks>
public sealed class FullDiskTests : IDisposable
{
    private const int DiskKib = 64;

    // Copies the journal to the disk, fills the rest, starts the command there, and tells what the disk holds after it.
    private const string OnFullDisk =
        """
        mount -t tmpfs -o size=${1}k none disk && shift || exit 99
        cp bakes.csv n.ipynb disk
        cd disk
        cat /dev/zero > rest 2> /dev/null
        "$@"
        status=$?
        cmp bakes.csv ../bakes.csv && ls >> ../left
        exit $status
        """;

    // A file of a byte is too long, so that nothing at all can be written.
    private const string WithoutSpace =
        """
        shift
        cp bakes.csv n.ipynb disk
        cd disk
        trap '' XFSZ
        prlimit --fsize=0 "$@"
        status=$?
        cmp bakes.csv ../bakes.csv && ls . >> ../left
        exit $status
        """;

    private readonly TemporaryFolder _folder = new();

    public FullDiskTests()
    {
        _folder.Write("bakes.csv", "bake_id,baked_on,notes\nA-1,2026-10-01,fine\n");
        _folder.Write("n.ipynb", Of(Code("Console.Write(6 * 7);")));
        Directory.CreateDirectory(_folder.File("disk"));
    }

    public void Dispose() => _folder.Dispose();

    [Theory]
    [InlineData("add", "bakes.csv", "--set", "baked_on=2026-11-03")]
    [InlineData("check", "bakes.csv", "--to", "new.csv")]
    [InlineData("run", "n.ipynb", "--to", "page.html")]
    [InlineData("run", "n.ipynb", "--to", "run.ipynb")]
    public async Task A_full_disk_is_said_in_one_line_and_leaves_the_journal_and_nothing_else(params string[] arguments)
    {
        var run = await OnFull(BakeCommand.Line(arguments));

        Assert.Equal((2, ""), (run.ExitCode, run.Output));
        var line = Assert.Single(run.ErrorLines);
        Assert.Matches("No space left on device|longer than it may be|too large", line);
        Assert.Matches("See that the disk has room|Choose another place, or free this one", line);
        Assert.Equal(["bakes.csv", "n.ipynb"], (await File.ReadAllLinesAsync(_folder.File("left"))).Except(["rest"]));
    }

    private async Task<Started> OnFull(string[] command)
    {
        string[] arguments = ["sh", "-c", OnFullDisk, "sh", DiskKib.ToString(CultureInfo.InvariantCulture), .. command];
        string[] namespaces = Environment.IsPrivilegedProcess ? ["--mount"] : ["--mount", "--user", "--map-root-user"];
        var run = await Started.RunAsync("unshare", [.. namespaces, .. arguments], _folder.Path);
        var couldMount = run.ExitCode != 99 && !run.Errors.StartsWith("unshare:", StringComparison.Ordinal);
        return couldMount
            ? run
            : await Started.RunAsync(
                "sh",
                ["-c", WithoutSpace, .. arguments[3..]],
                _folder.Path,
                new Dictionary<string, string> { ["DOTNET_EnableWriteXorExecute"] = "0" });
    }
}
