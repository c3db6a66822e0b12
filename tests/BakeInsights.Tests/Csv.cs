using BakeInsights.TestKit;

namespace BakeInsights.Tests;

/// <summary>Journals of one file, from the lines of the file.</summary>
internal static class Csv
{
    /// <summary>Reads lines, the header first, as <c>bakes.csv</c>.</summary>
    public static Journal Read(params string[] lines) => ReadText(string.Join('\n', lines) + "\n");

    /// <summary>Reads a text, byte for byte in UTF-8, as <c>bakes.csv</c>.</summary>
    public static Journal ReadText(string text)
    {
        using var folder = new TemporaryFolder();
        return Journal.Read(folder.Write("bakes.csv", text));
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
