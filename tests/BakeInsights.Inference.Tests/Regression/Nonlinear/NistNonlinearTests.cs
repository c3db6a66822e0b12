using System.Globalization;
using BakeInsights.TestKit;
using Xunit;

namespace BakeInsights.Inference.Tests;

/// <summary>NIST Statistical Reference Datasets, nonlinear regression: certified to 11 digits, public domain.</summary>
public class NistNonlinearTests
{
    private const double DigitsAsked = 8;

    public static TheoryData<string, int> SetsAndStarts
    {
        get
        {
            var data = new TheoryData<string, int>();
            foreach (var (name, _, _) in NistNonlinearSet.All)
            {
                data.Add(name, 1);
                data.Add(name, 2);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(SetsAndStarts))]
    public void Fit_reaches_eight_digits_from_either_start(string name, int start)
    {
        var set = new NistNonlinearSet(name);

        var fit = set.Fit(start).Value;

        Assert.InRange(set.EstimateDigits(fit), DigitsAsked, 11);

        // Lanczos1's residuals are 1e-13 of a response known to 1e-16, so its deviations can't have more digits.
        Assert.InRange(set.DeviationDigits(fit), name == "Lanczos1" ? 2.5 : DigitsAsked, 11);
    }

    [Fact]
    public void Published_table_of_digits_is_the_one_reached()
    {
        const string text = """
            # Digits reached on the NIST nonlinear regressions

            The NIST Statistical Reference Datasets (https://www.itl.nist.gov/div898/strd/nls/nls_main.shtml)
            certify 11 digits of 27 nonlinear regressions, each with a start far from the solution and one
            near it. The table counts how many of them `NonlinearLeastSquares.Fit` gets right, with derivatives
            from differences: minus the decimal logarithm of the relative error, the worst of its kind, rounded
            down, at most 10. The residuals of Lanczos1 are 1e-13 of a response that double precision holds to
            1e-16, so its standard deviations can't have more than 3 or 4 digits; they are given as "few".

            SD = standard deviation.

            | data set | difficulty | estimates, start 1 | SD, start 1 | estimates, start 2 | SD, start 2 |
            |---|---|---|---|---|---|

            """;

        var rows = NistNonlinearSet.All.Select(entry =>
        {
            var set = new NistNonlinearSet(entry.Name);
            string Digits(double digits) =>
                digits < 5 ? "few" : Math.Floor(Math.Min(digits, 10)).ToString(CultureInfo.InvariantCulture);
            string[] cells =
            [
                entry.Name, entry.Difficulty,
                .. new[] { 1, 2 }.Select(start => set.Fit(start).Value)
                    .SelectMany(fit => new[] { Digits(set.EstimateDigits(fit)), Digits(set.DeviationDigits(fit)) }),
            ];
            return $"| {string.Join(" | ", cells)} |\n";
        });

        Approved.Matches("docs/nist-nonlinear-digits.md", text + string.Concat(rows));
    }
}
