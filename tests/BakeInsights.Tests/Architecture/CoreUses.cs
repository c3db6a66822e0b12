using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace BakeInsights.Tests;

/// <summary>One use of a type: where, which, and of which folder or library.</summary>
internal sealed record Use(string File, string Folder, string Type, string Of);

/// <summary>
/// What each folder of the core library uses, as the compiler sees it: all its types share one namespace and several
/// share their names with properties, so the text alone can't tell.
/// </summary>
internal sealed class CoreUses
{
    private const string Root = "src/BakeInsights/";
    private const string CoreAssembly = "BakeInsights";

    // What the SDK's ImplicitUsings adds to the project.
    private const string ImplicitUsings =
        "global using System; global using System.IO; global using System.Linq; global using System.Net.Http;"
        + "global using System.Collections.Generic; global using System.Threading; global using System.Threading.Tasks;";

    private static readonly CSharpParseOptions Language = new(LanguageVersion.CSharp14, DocumentationMode.None);

    private CoreUses(IReadOnlyList<string> errors, IReadOnlyList<Use> uses)
    {
        Errors = errors;
        Uses = uses;
    }

    /// <summary>The library as it stands, compiled once.</summary>
    public static CoreUses AsItStands { get; } = With();

    /// <summary>What the compiler could not make sense of; with errors, the uses would be incomplete.</summary>
    public IReadOnlyList<string> Errors { get; }

    /// <summary>All uses of types of another folder of the library, or of another assembly.</summary>
    public IReadOnlyList<Use> Uses { get; }

    /// <summary>The library with more files in it, each by its path below the project's folder.</summary>
    public static CoreUses With(params (string Path, string Text)[] more)
    {
        var files = Sources.Below(Root, ".cs").Select(path => (Path: path[Root.Length..], Text: Sources.Text(path))).Concat(more);
        var trees = files.Append((Path: "usings.cs", Text: ImplicitUsings))
            .Select(file => CSharpSyntaxTree.ParseText(file.Text, Language, file.Path)).ToList();
        var compilation = CSharpCompilation.Create(
            CoreAssembly, trees, References(), new(OutputKind.DynamicallyLinkedLibrary, nullableContextOptions: NullableContextOptions.Enable));
        var errors = compilation.GetDiagnostics().Where(each => each.Severity == DiagnosticSeverity.Error);
        return new([.. errors.Select(each => each.ToString())], [.. trees.SelectMany(tree => UsesIn(tree, compilation)).Distinct()]);
    }

    /// <summary>The folder that a path below the project's folder starts with.</summary>
    public static string FolderOf(string path) => path.Split('/')[0];

    private static IEnumerable<Use> UsesIn(SyntaxTree tree, CSharpCompilation compilation)
    {
        var model = compilation.GetSemanticModel(tree);
        var folder = FolderOf(tree.FilePath);
        foreach (var node in tree.GetRoot().DescendantNodes().Where(node => node is SimpleNameSyntax or BaseObjectCreationExpressionSyntax))
        {
            var symbol = model.GetSymbolInfo(node).Symbol;
            if ((symbol as INamedTypeSymbol ?? symbol?.ContainingType)?.OriginalDefinition is not { } type)
            {
                continue;
            }

            var of = type.DeclaringSyntaxReferences is [var declared, ..]
                ? FolderOf(declared.SyntaxTree.FilePath)
                : type.ContainingAssembly?.Name;
            if (of is not null && of != folder)
            {
                yield return new(tree.FilePath, folder, type.Name, of);
            }
        }
    }

    // The assemblies that the tests run with are those that the library is built against.
    private static IEnumerable<MetadataReference> References() =>
        ((string)AppContext.GetData("TRUSTED_PLATFORM_ASSEMBLIES")!).Split(Path.PathSeparator)
        .Where(path => Path.GetFileNameWithoutExtension(path) != CoreAssembly)
        .Select(path => MetadataReference.CreateFromFile(path));
}
