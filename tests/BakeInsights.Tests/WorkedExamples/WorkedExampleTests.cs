using System.Globalization;
using System.Text;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Tests;

public class WorkedExampleTests
{
    private static readonly IReadOnlyList<WorkedExample> Examples =
    [
        .. DoughExamples.All.Concat(WaterExamples.All).Concat(FermentationExamples.All).OrderBy(example => example.Number),
    ];

    public static TheoryData<int, string> Names()
    {
        var names = new TheoryData<int, string>();
        for (var i = 0; i < Examples.Count; i++)
        {
            names.Add(i, Examples[i].ToString());
        }

        return names;
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Our_value_is_the_one_its_source_has(int index, string name)
    {
        var example = Examples[index];
        Assert.Equal(name, example.ToString());
        Assert.InRange(example.Ours, example.Theirs - example.Tolerance, example.Theirs + example.Tolerance);
    }

    [Fact]
    public void The_table_of_examples_in_the_documentation_is_the_one_these_tests_make() =>
        Approved.Matches("docs/reference/examples.md", Table());

    private static string Table()
    {
        var text = new StringBuilder(
            """
            # Worked examples: ours and theirs

            Calculations that others have printed, run through this code. "Worked out apart" marks values for which no
            source prints a result: they were calculated outside this code from published constants. A test makes this
            page and fails when a value leaves its tolerance, which is the rounding of the source; 0 stands for the rounding
            of double precision.

            | no. | what | unit | ours | source's | difference | tolerance | source |
            |---|---|---|---|---|---|---|---|

            """);
        foreach (var one in Examples)
        {
            text.Append(CultureInfo.InvariantCulture, $"| {one.Number} | {one.What} | {one.Unit} | {Shown(one.Ours)} | {Shown(one.Theirs)} ")
                .Append(CultureInfo.InvariantCulture, $"| {Difference(one)} | {one.Tolerance:0.#######} | {one.Source} |\n");
        }

        return text.ToString();
    }

    // Rounding of double precision is not a difference worth printing.
    private static string Difference(WorkedExample example)
    {
        var difference = example.Ours - example.Theirs;
        return Math.Abs(difference) < 1e-7 ? "0" : difference.ToString("0.#######", CultureInfo.InvariantCulture);
    }

    private static string Shown(double value) => value.ToString("0.#######", CultureInfo.InvariantCulture);
}
