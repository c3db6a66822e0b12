namespace BakeInsights.TestKit;

/// <summary>An empty folder of its own for one test, removed with everything in it.</summary>
public sealed class TemporaryFolder : IDisposable
{
    /// <summary>Where it lies.</summary>
    public string Path { get; } = Directory.CreateTempSubdirectory("bakeinsights-").FullName;

    /// <summary>The path of a file in it.</summary>
    public string File(string name) => System.IO.Path.Combine(Path, name);

    /// <summary>Writes a file in it and gives its path.</summary>
    public string Write(string name, string text)
    {
        var path = File(name);
        System.IO.File.WriteAllText(path, text);
        return path;
    }

    /// <inheritdoc/>
    public void Dispose() => Directory.Delete(Path, recursive: true);
}
