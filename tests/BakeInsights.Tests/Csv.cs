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
    public static Journal ReadBytes(byte[] bytes)
    {
        using var folder = new TemporaryFolder();
        var path = folder.File("bakes.csv");
        File.WriteAllBytes(path, bytes);
        return Journal.Read(path);
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
