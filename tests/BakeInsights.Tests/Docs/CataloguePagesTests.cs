using System.Globalization;
using System.Text;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

/// <summary>Pages of the documentation that are written from a catalogue, so that they can't drift from it.</summary>
public class CataloguePagesTests
{
    [Fact]
    public void The_page_of_measures_lists_the_catalogue()
    {
        var page = new StringBuilder(
            """
            # Measures

            Every number that is worked out from a bake, and those taken as logged. A measure is missing when the bake lacks
            what it takes; missing is never zero. Written from the catalogue by a test.

            | measure | what | unit | formula | source |
            |---|---|---|---|---|

            """);
        foreach (var measure in Measures.All)
        {
            var unit = DisplayUnit.For(measure.Dimension, UnitSystem.Metric).Label;
            page.Append(CultureInfo.InvariantCulture, $"| `{measure.Name}` | {measure.Title} | {unit} | {measure.Formula} | {measure.Source} |\n");
        }

        Approved.Matches("docs/measures.md", page.ToString());
    }

    [Fact]
    public void The_page_of_columns_lists_the_catalogue()
    {
        var page = new StringBuilder(
            """
            # Columns of bakes*.csv

            All but `baked_on` may be missing. A column of numbers may end in another unit of its kind. A number outside the
            range can't be meant: the cell counts as missing, with a notice. Written from the catalogue by a test.

            | column | what a cell says | range or words |
            |---|---|---|

            """);
        foreach (var column in BakeColumns.All)
        {
            var accepted = column switch
            {
                QuantityColumn { Dimension: Dimension.TimeOfDay } => "00:00 to 23:59",
                QuantityColumn quantity => string.Create(CultureInfo.InvariantCulture, $"{quantity.Low} to {quantity.High}"),
                ChoiceColumn choice => string.Join(", ", choice.Values),
                _ => "text",
            };
            page.Append(CultureInfo.InvariantCulture, $"| `{column}` | {column.Meaning} | {accepted} |\n");
        }

        Approved.Matches("docs/columns.md", page.ToString());
    }
}
