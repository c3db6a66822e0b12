using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Charts draw what they are given: they fit nothing.</summary>
public partial class ChartSourceTests
{
    [Fact]
    public void Charts_name_no_type_that_fits()
    {
        var fitting = Sources.Below("src/BakeInsights.Inference/Regression", ".cs")
            .Concat(Sources.Below("src/BakeInsights.Inference/Surfaces", ".cs"))
            .SelectMany(path => Declaration().Matches(Sources.Text(path)).Select(match => match.Groups[1].Value))
            .ToHashSet();

        Assert.Contains("LeastSquares", fitting);
        Assert.All(Sources.Below("src/BakeInsights.Reports/Charts", ".cs"), path => Assert.Empty(Identifiers(path).Intersect(fitting)));
    }

    private static IEnumerable<string> Identifiers(string path) => CSharpSyntaxTree.ParseText(Sources.Text(path)).GetRoot()
        .DescendantTokens().Where(token => token.IsKind(SyntaxKind.IdentifierToken)).Select(token => token.ValueText);

    [GeneratedRegex(@"^(?:public|internal)[a-z ]* (?:class|record|struct|enum) (?:struct )?(\w+)", RegexOptions.Multiline)]
    private static partial Regex Declaration();
}
