namespace BakeInsights.TestKit;

/// <summary>Where the checkout that is being tested lies.</summary>
public static class Repository
{
    /// <summary>The folder that holds BakeInsights.sln.</summary>
    public static string Root { get; } = FindRoot();

    /// <summary>A file or folder of the checkout, by its path from the root with forward slashes.</summary>
    public static string Path(string relative) => System.IO.Path.Combine([Root, .. relative.Split('/')]);

    /// <summary>A file of published data and expected values.</summary>
    public static string ReferenceData(string relative) => Path("tests/reference-data/" + relative);

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(System.IO.Path.Combine(folder.FullName, "BakeInsights.sln")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException($"BakeInsights.sln is in no folder above {AppContext.BaseDirectory}.");
    }
}
