using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>The page of the names that every fit answers with, written from the documentation of their types.</summary>
public class ShapesPageTests
{
    private static readonly IReadOnlyList<(string Title, Type Type)> Shapes =
    [
        ("A term", typeof(Term)), ("The whole", typeof(FitSummary)), ("A row", typeof(FitRow)), ("An interval", typeof(Interval)),
        ("A problem, in place of a fit", typeof(FitProblem)),
    ];

    [Fact]
    public void The_page_of_names_is_written_from_the_types()
    {
        var members = XDocument.Load(Path.ChangeExtension(typeof(Term).Assembly.Location, ".xml"))
            .Descendants("member").ToDictionary(member => (string)member.Attribute("name")!);
        var page = new StringBuilder(
            """
            # What every fit answers

            Every method of `BakeInsights.Inference` answers in the same three shapes (`IFit`): its terms, one summary of the
            whole, and its rows. These are their names. Written from the types' own documentation by a test.

            """);
        foreach (var (title, type) in Shapes)
        {
            var documentation = members[$"T:{type.FullName}"];
            page.Append($"\n## {title}: `{type.Name}`\n\n{Words(documentation.Element("summary")!)}\n\n| name | meaning |\n|---|---|\n");
            foreach (var parameter in documentation.Elements("param"))
            {
                page.Append($"| `{(string)parameter.Attribute("name")!}` | {Words(parameter)} |\n");
            }

            foreach (var property in type.GetProperties().Select(property => property.Name).Order(StringComparer.Ordinal))
            {
                if (members.TryGetValue($"P:{type.FullName}.{property}", out var member) && member.Element("summary") is { } summary
                    && documentation.Elements("param").All(parameter => (string)parameter.Attribute("name")! != property))
                {
                    page.Append($"| `{property}` | {Words(summary)} |\n");
                }
            }
        }

        Approved.Matches("docs/inference-names.md", page.ToString());
    }

    private static string Words(XElement element) => Regex.Replace(
        string.Concat(element.Nodes().Select(node => node is XElement part
            ? $"`{((string?)part.Attribute("cref") ?? (string?)part.Attribute("name") ?? part.Value).Split('.')[^1]}`"
            : node.ToString())), @"\s+", " ").Trim();
}
