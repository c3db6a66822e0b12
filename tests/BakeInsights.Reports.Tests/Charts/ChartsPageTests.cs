using System.Globalization;
using System.Text.RegularExpressions;
using BakeInsights.TestKit;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;
using Plotly.NET;
using Xunit;

namespace BakeInsights.Reports.Tests;

public class ChartsPageTests
{
    private static readonly ScriptOptions Options = ScriptOptions.Default
        .WithReferences(typeof(Bake).Assembly, typeof(Inference.FitProblem).Assembly, typeof(RiseTimeChart).Assembly, typeof(GenericChart).Assembly, typeof(Enumerable).Assembly)
        .WithImports("System", "System.Linq", "BakeInsights", "BakeInsights.Reports");

    [Fact]
    public async Task Each_example_of_the_page_compiles_and_gives_a_chart()
    {
        Thread.CurrentThread.CurrentCulture = CultureInfo.InvariantCulture;
        var page = await File.ReadAllTextAsync(Repository.Path("docs/charts.md"));
        var blocks = Regex.Matches(page, "```csharp\n(.*?)```", RegexOptions.Singleline).Select(match => match.Groups[1].Value).ToList();
        Assert.NotEmpty(blocks);
        ScriptState<object>? state = null;
        foreach (var block in blocks)
        {
            var code = block.Replace("\"data-demo/", $"\"{Repository.Path("data-demo")}/", StringComparison.Ordinal);
            state = state is null ? await CSharpScript.RunAsync(code, Options) : await state.ContinueWithAsync(code, Options);
            Assert.NotEqual("", new Figure(Assert.IsType<GenericChart>(state.ReturnValue, exactMatch: false)).Title);
        }
    }

    [Fact]
    public void The_page_names_every_chart_there_is()
    {
        var page = File.ReadAllText(Repository.Path("docs/charts.md"));
        var charts = typeof(RiseTimeChart).Assembly.GetExportedTypes()
            .Where(type => type.GetMethods().Any(method => method.IsStatic && method.ReturnType == typeof(GenericChart)));
        Assert.All(charts, chart => Assert.Contains($"`{chart.Name}`", page, StringComparison.Ordinal));
    }
}
