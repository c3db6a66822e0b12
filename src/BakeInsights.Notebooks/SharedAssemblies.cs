using System.Reflection;
using System.Runtime.Loader;

namespace BakeInsights.Notebooks;

/// <summary>Which assemblies a notebook's code gets, and which of two versions.</summary>
internal static class SharedAssemblies
{
    private const string FSharpCore = "FSharp.Core";

    private static int _answering;

    /// <summary>
    /// The notebook tool brings an older FSharp.Core than Plotly.NET asks for, and only one can be loaded. The older
    /// one serves; it has only to be offered. To be called before the first chart type is touched.
    /// </summary>
    public static void AnswerForFSharpCore()
    {
        if (Interlocked.Exchange(ref _answering, 1) == 0)
        {
            AssemblyLoadContext.Default.Resolving += (_, name) => name.Name == FSharpCore ? Loaded(FSharpCore) : null;
        }
    }

    /// <summary>
    /// The files of the toolkit's own assembly and of all that it stands on, as a restore of the package would give
    /// them; the framework's own are left out.
    /// </summary>
    public static IReadOnlyList<string> FilesOfTheToolkit()
    {
        var files = new SortedDictionary<string, string>(StringComparer.Ordinal);
        Collect(typeof(SharedAssemblies).Assembly, files);

        // Notebooks make charts by this one; none of our own code may happen to refer to it.
        Collect(typeof(Plotly.NET.CSharp.Chart).Assembly, files);
        return [.. files.Values];
    }

    private static void Collect(Assembly assembly, SortedDictionary<string, string> files)
    {
        var folder = Path.GetDirectoryName(typeof(SharedAssemblies).Assembly.Location)!;
        if (Path.GetDirectoryName(assembly.Location) != folder || !files.TryAdd(assembly.GetName().Name!, assembly.Location))
        {
            return;
        }

        foreach (var reference in assembly.GetReferencedAssemblies())
        {
            if (File.Exists(Path.Combine(folder, reference.Name + ".dll")))
            {
                Collect(Assembly.Load(reference), files);
            }
        }
    }

    private static Assembly? Loaded(string name) =>
        AppDomain.CurrentDomain.GetAssemblies().FirstOrDefault(assembly => assembly.GetName().Name == name);
}
