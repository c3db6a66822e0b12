using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>What can go wrong between a copy and its taking a file's place, and two writers at once.</summary>
public sealed class AppendedFileTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly string _file;

    public AppendedFileTests() => _file = _folder.Write("bakes.csv", "baked_on\n");

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Copy_takes_the_place_only_when_told()
    {
        using var copy = new AppendedFile(_file, "2026-10-02\n"u8);

        Assert.Equal("baked_on\n", File.ReadAllText(_file));
        Assert.Equal("baked_on\n2026-10-02\n", File.ReadAllText(copy.Copy));
        copy.TakePlace();
        Assert.Equal("baked_on\n2026-10-02\n", File.ReadAllText(_file));
    }

    [Fact]
    public void Copy_that_did_not_take_the_place_is_removed()
    {
        new AppendedFile(_file, "2026-10-02\n"u8).Dispose();

        Assert.Equal([_file], Directory.GetFileSystemEntries(_folder.Path));
    }

    [Fact]
    public void Copy_that_a_crash_left_behind_is_written_over()
    {
        Directory.CreateDirectory(_file + ".adding");
        File.WriteAllText(Path.Combine(_file + ".adding", "bakes.csv"), "half a li, and much longer than what comes now");

        using (var copy = new AppendedFile(_file, "2026-10-02\n"u8))
        {
            copy.TakePlace();
        }

        Assert.Equal("baked_on\n2026-10-02\n", File.ReadAllText(_file));
        Assert.Equal([_file], Directory.GetFileSystemEntries(_folder.Path));
    }

    [Fact]
    public void File_that_another_program_saved_meanwhile_is_not_replaced()
    {
        using var copy = new AppendedFile(_file, "2026-10-02\n"u8);
        File.AppendAllText(_file, "2026-10-03\n");

        var failure = Assert.Throws<JournalFileException>(copy.TakePlace);

        Assert.Equal("Another program changed the file while the bake was being added.", failure.Reason);
        Assert.Equal("baked_on\n2026-10-03\n", File.ReadAllText(_file));
    }

    // The device takes no byte and says that the disk is full.
    [Fact]
    public void Full_disk_is_an_error_of_writing()
    {
        using var from = File.OpenRead(_file);

        var failure = Assert.Throws<IOException>(() => AppendedFile.Write(from, "/dev/full", "2026-10-02\n"u8));

        Assert.Contains("No space left on device", failure.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Second_writer_waits_until_told_to_stop()
    {
        using var first = JournalLock.Take(_file, CancellationToken.None);
        using var stop = new CancellationTokenSource();
        stop.Cancel();

        Assert.Throws<OperationCanceledException>(() => JournalLock.Take(_file, stop.Token));
    }

    [Fact]
    public void Lock_that_a_crash_left_behind_locks_nobody_out()
    {
        File.WriteAllText(_file + ".lock", "");

        JournalLock.Take(_file, CancellationToken.None).Dispose();

        Assert.Equal([_file], Directory.GetFileSystemEntries(_folder.Path));
    }

    [Fact]
    public void Only_one_of_many_writers_holds_the_lock_at_a_time()
    {
        var holders = 0;
        var most = 0;
        Parallel.For(0, 60, new ParallelOptions { MaxDegreeOfParallelism = 4 }, _ =>
        {
            using var hold = JournalLock.Take(_file, CancellationToken.None);
            most = Math.Max(most, Interlocked.Increment(ref holders));
            Interlocked.Decrement(ref holders);
        });

        Assert.Equal((1, 0), (most, holders));
    }
}
