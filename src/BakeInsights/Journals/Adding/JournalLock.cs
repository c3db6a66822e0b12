namespace BakeInsights;

/// <summary>Keeps all other writers that ask for it from a file, until it is disposed of.</summary>
/// <remarks>
/// The lock is on a file beside the journal's, and the system gives it back when its holder ends, however it ends: a
/// lock file that a crash left behind locks nobody out.
/// </remarks>
internal sealed class JournalLock : IDisposable
{
    // Common practice, no source: an add holds the lock for the time of reading the journal twice.
    private const int Attempts = 200;
    private const int PauseMilliseconds = 50;

    // ERROR_SHARING_VIOLATION of Windows, EWOULDBLOCK of Linux and of macOS: what opening a held file fails with.
    private static readonly int[] Held = [unchecked((int)0x8007_0020), 11, 35];

    private static readonly DateTime Origin = new(2000, 1, 1, 0, 0, 0, DateTimeKind.Utc);

    private readonly string _path;
    private readonly FileStream _stream;

    private JournalLock(string path, FileStream stream)
    {
        _path = path;
        _stream = stream;
    }

    /// <summary>Waits for the lock of a file.</summary>
    /// <exception cref="JournalFileException">Another writer holds it for long.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public static JournalLock Take(string file, CancellationToken stop)
    {
        for (var attempt = 0; attempt < Attempts; attempt++)
        {
            if (TryTake(file + ".lock") is { } taken)
            {
                return taken;
            }

            stop.WaitHandle.WaitOne(PauseMilliseconds);
            stop.ThrowIfCancellationRequested();
        }

        throw new JournalFileException(
            file, "Another bake is being added to it.", "Try again in a moment; the journal is as it was.");
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        // While it is still held: whoever waits finds a new file, or notices that the old one is gone.
        if (!OperatingSystem.IsWindows())
        {
            File.Delete(_path);
        }

        _stream.Dispose();
    }

    private static JournalLock? TryTake(string path)
    {
        // Windows can't delete an open file, but deletes it when it is closed.
        var options = OperatingSystem.IsWindows() ? FileOptions.DeleteOnClose : FileOptions.None;
        FileStream stream;
        try
        {
            stream = new FileStream(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, options);
        }
        catch (IOException failure) when (Held.Contains(failure.HResult))
        {
            return null;
        }

        if (IsStillThere(path, stream))
        {
            return new JournalLock(path, stream);
        }

        stream.Dispose();
        return null;
    }

    // Between opening and locking, the holder before may have deleted the file: the lock would be on a file without a
    // name, which locks nobody out. A time that nobody else sets tells whether the name is still this file's.
    private static bool IsStillThere(string path, FileStream stream)
    {
        var mark = Origin.AddSeconds(BitConverter.ToUInt32(Guid.NewGuid().ToByteArray()) / 4 * 2);
        File.SetLastWriteTimeUtc(stream.SafeFileHandle, mark);
        return File.GetLastWriteTimeUtc(path) == mark;
    }
}
