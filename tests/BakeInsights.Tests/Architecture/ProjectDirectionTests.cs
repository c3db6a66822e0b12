using System.Xml.Linq;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Which project may refer to which, and which packages each stands on.</summary>
public class ProjectDirectionTests
{
    private const string NotebookHost = "Microsoft.DotNet.Interactive";

    public static TheoryData<string, string[], string[]> Allowed => new()
    {
        { "BakeInsights.Inference", [], ["MathNet.Numerics"] },
        { "BakeInsights", ["BakeInsights.Inference"], ["CsvHelper", "Microsoft.Data.Analysis", "UnitsNet"] },
        { "BakeInsights.Reports", ["BakeInsights"], ["Markdig", "Plotly.NET", "Plotly.NET.CSharp"] },
        { "BakeInsights.Notebooks", ["BakeInsights.Reports"], [NotebookHost + "*"] },
        { "BakeInsights.Cli", ["BakeInsights.Notebooks"], [NotebookHost + "*", "Spectre.Console", "Spectre.Console.Cli"] },
    };

    [Theory]
    [MemberData(nameof(Allowed))]
    public void Project_refers_only_to_what_lies_further_in(string project, string[] projects, string[] packages)
    {
        var file = XDocument.Load(Repository.Path($"src/{project}/{project}.csproj"));

        Assert.Equal(projects, References(file, "ProjectReference").Select(path => Path.GetFileNameWithoutExtension(path)));
        Assert.All(References(file, "PackageReference"), package => Assert.Contains(packages, allowed => Matches(allowed, package)));
    }

    [Fact]
    public void Every_project_has_its_rule() => Assert.Equal(
        Allowed.Select(row => $"src/{row[0]}/{row[0]}.csproj").Order(StringComparer.Ordinal),
        Sources.Below("src", ".csproj"));

    [Fact]
    public void Only_the_outermost_projects_name_the_notebook_host()
    {
        var named = Sources.Below("src", ".cs").Concat(Sources.Below("src", ".csproj"))
            .Where(path => Sources.Text(path).Contains(NotebookHost, StringComparison.Ordinal))
            .Select(path => path.Split('/')[1]).Distinct();

        Assert.Subset(new HashSet<string> { "BakeInsights.Notebooks", "BakeInsights.Cli" }, named.ToHashSet());
    }

    [Fact]
    public void Package_versions_stand_in_one_file()
    {
        var projects = Sources.Below("src", ".csproj").Concat(Sources.Below("tests", ".csproj"))
            .Concat(Sources.Below("src", ".props")).Concat(Sources.Below("tests", ".props")).Append("Directory.Build.props");

        Assert.All(projects, path => Assert.DoesNotContain(
            XDocument.Parse(Sources.Text(path)).Descendants("PackageReference"),
            reference => new[] { "Version", "VersionOverride" }.Any(name =>
                reference.Attribute(name) is not null || reference.Element(name) is not null)));
    }

    private static IEnumerable<string> References(XDocument project, string kind) =>
        project.Descendants(kind).Select(reference => reference.Attribute("Include")!.Value.Replace('\\', '/'));

    private static bool Matches(string allowed, string package) =>
        allowed.EndsWith('*')
            ? package == allowed[..^1] || package.StartsWith(allowed[..^1] + ".", StringComparison.Ordinal)
            : package == allowed;
}
