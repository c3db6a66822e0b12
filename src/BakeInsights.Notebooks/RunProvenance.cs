using System.Collections.Immutable;
using System.Security.Cryptography;
using BakeInsights.Reports;

namespace BakeInsights.Notebooks;

/// <summary>What a run was made from and by, so that a reader can tell whether two pages are of the same.</summary>
internal static class RunProvenance
{
    private const string JournalSetting = "journal";
    private const string HideNamesSetting = "hideNames";

    /// <summary>Journal, settings and versions; no day, no hour and no folder.</summary>
    /// <param name="notebook">The notebook, its settings as set.</param>
    /// <param name="folder">Where its relative paths start.</param>
    public static ImmutableArray<PageFact> Of(NotebookDocument notebook, string folder)
    {
        var settings = NotebookSettings.Values(notebook);
        var hidesNames = settings.Any(setting => setting is (HideNamesSetting, "true"));
        var journal = settings.FirstOrDefault(setting => setting.Name == JournalSetting).Value;
        var others = settings.Where(setting => setting.Name != JournalSetting).Select(setting => $"{setting.Name} = {(setting.Value.Length > 0 ? setting.Value : "(empty)")}").ToList();
        return
        [
            .. journal is { Length: > 0 } ? FactsOf(Path.GetFullPath(journal, folder), hidesNames) : [],
            .. others.Count > 0 ? [new PageFact("Settings", string.Join("; ", others))] : Array.Empty<PageFact>(),
            new PageFact("Made by", $"BakeInsights {VersionOf(typeof(RunProvenance))}, .NET {Environment.Version}, plotly.js {PlotlyScript.Version}"),
        ];
    }

    private static IEnumerable<PageFact> FactsOf(string path, bool hidesNames)
    {
        Journal journal;
        try
        {
            journal = Journal.Read(path, hidesNames: hidesNames);
        }
        catch (JournalFileException)
        {
            // The cell that reads it says so where it stands.
            yield break;
        }

        foreach (var (place, file) in journal.Files.Index())
        {
            // Folders and files are often called after their baker.
            var name = hidesNames ? FormattableString.Invariant($"file {place + 1}") : file.Name;
            yield return new PageFact(
                $"Journal, {name}",
                FormattableString.Invariant($"{Rows(file.Rows)} read, {Rows(file.SetAside)} set aside; SHA-256 {HashOf(path, file)}"));
        }

        var remarks = journal.Notices.GroupBy(notice => notice.Gravity).OrderByDescending(group => group.Key)
            .Select(group => FormattableString.Invariant($"{group.Count()} {group.Key.ToString().ToLowerInvariant()}"));
        yield return new PageFact("Remarks on it", string.Join(", ", remarks.DefaultIfEmpty("none")));
    }

    private static string Rows(int count) => FormattableString.Invariant($"{count} {(count == 1 ? "row" : "rows")}");

    private static string HashOf(string path, JournalFile file)
    {
        using var stream = File.OpenRead(Directory.Exists(path) ? Path.Combine(path, file.Name) : path);
        return Convert.ToHexStringLower(SHA256.HashData(stream));
    }

    private static string VersionOf(Type type) => type.Assembly.GetName().Version!.ToString(fieldCount: 3);
}
