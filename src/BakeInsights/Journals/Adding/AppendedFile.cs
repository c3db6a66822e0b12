namespace BakeInsights;

/// <summary>A copy of a file with a few more bytes at its end, that takes the file's place once it is on the disk.</summary>
/// <remarks>
/// The copy lies in a folder of its own beside the file, under the file's name, so that the reader can be shown it as
/// part of the journal before it counts. A crash leaves at most that folder, which the next writer clears.
/// </remarks>
internal sealed class AppendedFile : IDisposable
{
    private readonly string _file;
    private readonly string _folder;
    private readonly (long Length, DateTime Written) _before;

    /// <summary>Makes the copy and has the system put it on the disk.</summary>
    public AppendedFile(string file, ReadOnlySpan<byte> line)
    {
        _file = file;
        _folder = file + ".adding";
        Copy = Path.Combine(_folder, Path.GetFileName(file));
        _before = State();
        try
        {
            Directory.CreateDirectory(_folder);
            using (var from = File.OpenRead(file))
            {
                Write(from, Copy, line);
            }

            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(Copy, File.GetUnixFileMode(file));
            }
        }
        catch
        {
            Dispose();
            throw;
        }
    }

    /// <summary>Where the copy is.</summary>
    public string Copy { get; }

    /// <summary>Puts the copy in the file's place, in one step: a reader sees the old bytes or the new ones.</summary>
    /// <exception cref="JournalFileException">The file has changed since it was copied.</exception>
    public void TakePlace()
    {
        if (State() != _before)
        {
            throw new JournalFileException(
                _file, "Another program changed the file while the bake was being added.", "Add the bake again; it was not added.");
        }

        File.Move(Copy, _file, overwrite: true);
    }

    /// <summary>Removes the copy if it has not taken the file's place.</summary>
    public void Dispose()
    {
        if (Directory.Exists(_folder))
        {
            Directory.Delete(_folder, recursive: true);
        }
    }

    /// <summary>Writes all bytes of a stream, then those of the line, and waits until the disk has them.</summary>
    internal static void Write(Stream from, string to, ReadOnlySpan<byte> line)
    {
        try
        {
            using var stream = File.Create(to);
            from.CopyTo(stream);
            stream.Write(line);
            stream.Flush(flushToDisk: true);
        }
        catch (ArgumentOutOfRangeException failure)
        {
            // What .NET makes of a file that its file system, or a limit set for its user, does not let grow so long.
            throw new IOException("The file would be longer than it may be.", failure);
        }
    }

    private (long Length, DateTime Written) State() => (new FileInfo(_file).Length, File.GetLastWriteTimeUtc(_file));
}
