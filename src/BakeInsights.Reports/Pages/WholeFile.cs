using System.Text;

namespace BakeInsights.Reports;

/// <summary>Writes a file whole or not at all.</summary>
public static class WholeFile
{
    private static readonly Encoding Utf8 = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);

    /// <summary>
    /// Writes to a temporary file in the same folder and moves it into place once it is complete. An error leaves an
    /// older file as it was, and no half of a new one.
    /// </summary>
    /// <param name="path">The file; replaced if it exists. Its folder must exist.</param>
    /// <param name="write">Writes the content.</param>
    /// <exception cref="IOException">The file can't be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder or the file may not be written.</exception>
    public static void Write(string path, Action<TextWriter> write)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        ArgumentNullException.ThrowIfNull(write);
        var target = Path.GetFullPath(path);
        var temporary = $"{target}.{Environment.ProcessId}.part";
        try
        {
            using (var writer = new StreamWriter(temporary, append: false, Utf8) { NewLine = "\n" })
            {
                write(writer);
            }

            File.Move(temporary, target, overwrite: true);
        }
        finally
        {
            File.Delete(temporary);
        }
    }
}
