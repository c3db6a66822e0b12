using System.Reflection;

namespace BakeInsights.Reports;

/// <summary>Files of this project that it carries along: a style sheet, scripts.</summary>
internal static class OwnFile
{
    private const string Prefix = "BakeInsights.Reports.";

    /// <summary>The file's text, with lines ended by <c>\n</c>.</summary>
    /// <param name="name">Its name without a folder.</param>
    public static string Text(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(Prefix + name)
            ?? throw new ArgumentException($"There is no file {name}.", nameof(name));
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
