using System.Text;
using BakeInsights.TestKit;

namespace BakeInsights.Tests;

/// <summary>Journals of one file, from the lines of the file.</summary>
internal static class Csv
{
    /// <summary>Reads lines, the header first, as <c>bakes.csv</c>.</summary>
    public static Journal Read(params string[] lines) => ReadText(string.Join('\n', lines) + "\n");

    /// <summary>Reads a text, byte for byte in UTF-8, as <c>bakes.csv</c>.</summary>
    public static Journal ReadText(string text) => ReadBytes(Encoding.UTF8.GetBytes(text));

    /// <summary>Reads bytes as <c>bakes.csv</c>.</summary>
    public static Journal ReadBytes(byte[] bytes, TimeZoneInfo? zone = null)
    {
        using var folder = new TemporaryFolder();
        var path = folder.File("bakes.csv");
        File.WriteAllBytes(path, bytes);
        return Journal.Read(path, zone);
    }

    /// <summary>Reads a folder of files, each its name and its lines.</summary>
    public static Journal ReadFolder(IEnumerable<(string Name, string[] Lines)> files, TimeZoneInfo? zone = null)
    {
        using var folder = new TemporaryFolder();
        foreach (var (name, lines) in files)
        {
            folder.Write(name, string.Join('\n', lines) + "\n");
        }

        return Journal.Read(folder.Path, zone);
    }

    /// <summary>The bake of a header and one row.</summary>
    public static Bake Bake(string header, string row) => Read(header, row).Bakes.Single();

    /// <summary>Bakes in the canonical form.</summary>
    public static string Canonical(IReadOnlyList<Bake> bakes)
    {
        using var writer = new StringWriter();
        CanonicalCsv.Write(writer, bakes);
        return writer.ToString();
    }
}
