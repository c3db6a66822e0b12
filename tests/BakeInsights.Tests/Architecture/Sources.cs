using BakeInsights.TestKit;

namespace BakeInsights.Tests;

/// <summary>The files of the checkout as they stand on the disk, without what a build left there.</summary>
internal static class Sources
{
    /// <summary>Files with this ending below a folder of the checkout, by their paths from the root.</summary>
    public static IReadOnlyList<string> Below(string folder, string ending) =>
    [
        .. Directory.EnumerateFiles(Repository.Path(folder), "*" + ending, SearchOption.AllDirectories)
            .Select(path => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/'))
            .Where(path => !path.Split('/').Any(part => part is "bin" or "obj"))
            .Order(StringComparer.Ordinal),
    ];

    /// <summary>The text of a file, by its path from the root.</summary>
    public static string Text(string path) => File.ReadAllText(Repository.Path(path));
}
