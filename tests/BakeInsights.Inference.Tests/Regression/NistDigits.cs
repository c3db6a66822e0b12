using System.Globalization;

namespace BakeInsights.Inference.Tests;

/// <summary>The page that says how many digits are reached, beside those of other programs.</summary>
internal static class NistDigits
{
    /// <summary>
    /// The digits that r/nist-digits.R wrote to nist-digits-lm.csv, and python/nist-digits.py to
    /// nist-digits-statsmodels.csv.
    /// </summary>
    private static readonly ReferenceTable Lm = ReferenceTable.Read("r/nist-digits-lm.csv");

    private static readonly ReferenceTable Statsmodels = ReferenceTable.Read("python/nist-digits-statsmodels.csv");

    public static string Page() => $"""
        # Digits reached on the NIST reference data sets

        The NIST Statistical Reference Datasets (https://www.itl.nist.gov/div898/strd/) certify 15 digits of their
        results. The tables count how many of them are right: minus the decimal logarithm of the relative error (of the
        absolute error where the certified value is 0), the worst of its kind, rounded down, at most 15. SD = standard
        deviation.

        The data are decimal, and a double rounds them. The limit is what remains if the rounded data are worked through
        in exact rational arithmetic: no program that reads doubles can be expected to get past it but by luck.

        The tests write this page: `BAKEINSIGHTS_ACCEPT=1 dotnet test tests/BakeInsights.Inference.Tests --filter Nist`.

        ## Linear regression

        `LeastSquares.Fit`, with `DesignColumn.Power` for the polynomials. Filip and the Wampler sets are polynomials in
        raw powers of x, made to be hard: their columns nearly depend on each other, so that the fit goes over to doubled
        precision.

        | data set | difficulty | rows | columns | coefficients | SD of coefficients | residual SD | R-squared | limit |
        |---|---|---|---|---|---|---|---|---|
        {string.Concat(NistSet.All.Select(Linear))}
        The same beside other programs: the worst over all coefficients and their standard deviations. Math.NET Numerics
        gives no standard deviations, so that its column counts the coefficients alone; R gives up on Filip and drops a
        column. R's digits are written by `tests/reference-data/r/nist-digits.R`, those of statsmodels by
        `tests/reference-data/python/nist-digits.py`.

        | data set | ours | R 4.2 `lm` | statsmodels 0.13 `OLS` | Math.NET 5.0 `MultipleRegression.QR` |
        |---|---|---|---|---|
        {string.Concat(NistSet.All.Select(Compared))}
        ## One-way analysis of variance

        `LeastSquares.Compare` of the fit with a column for every group but the first, and the fit without: the worst over
        F, both sums of squares, R-squared and the residual SD.

        | data set | rows | groups | digits | limit |
        |---|---|---|---|---|
        {string.Concat(NistVarianceSet.All.Select(Variance))}
        ## Mean, spread and serial correlation

        `SampleMoments.Of`. The limit is that of the SD.

        | data set | rows | mean | SD | serial correlation | limit |
        |---|---|---|---|---|---|
        {string.Concat(NistSample.All.Select(Sample))}
        """.TrimEnd() + "\n";

    private static string Linear((string Name, string Difficulty, int Degree) entry)
    {
        var set = new NistSet(entry.Name);
        return Row(
            entry.Name, entry.Difficulty, $"{set.Fit.N}", $"{set.Fit.Terms.Count}", Whole(set.CoefficientDigits),
            Whole(set.DeviationDigits), Whole(set.ResidualDigits), Whole(set.RSquaredDigits), Whole(set.InputLimit));
    }

    private static string Compared((string Name, string Difficulty, int Degree) entry)
    {
        var set = new NistSet(entry.Name);
        return Row(
            entry.Name, Whole(set.Digits), Whole(Of(Lm, entry.Name)), Whole(Of(Statsmodels, entry.Name)),
            Whole(set.LibraryDigits));
    }

    private static string Variance(string name)
    {
        var set = new NistVarianceSet(name);
        return Row(name, $"{set.Fit.N}", $"{set.Groups}", Whole(set.Digits), Whole(set.InputLimit));
    }

    private static string Sample(string name)
    {
        var set = new NistSample(name);
        return Row(
            name, $"{set.Moments.Count}", Whole(set.MeanDigits), Whole(set.SpreadDigits), Whole(set.SerialDigits),
            Whole(set.SpreadLimit));
    }

    private static double Of(ReferenceTable table, string set) =>
        table.Numbers("digits")[Array.IndexOf(table.Texts("set"), set)];

    private static string Whole(double digits) => Math.Floor(digits).ToString(CultureInfo.InvariantCulture);

    private static string Row(params string[] cells) => $"| {string.Join(" | ", cells)} |\n";
}
