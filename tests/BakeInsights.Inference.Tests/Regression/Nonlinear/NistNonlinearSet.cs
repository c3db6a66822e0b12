using static System.Math;

namespace BakeInsights.Inference.Tests;

/// <summary>A nonlinear set of the NIST Statistical Reference Datasets (nist/nonlinear.csv), with its fits.</summary>
internal sealed class NistNonlinearSet
{
    /// <summary>The models, as NIST gives them, with NIST's level of difficulty.</summary>
    public static readonly IReadOnlyList<(string Name, string Difficulty,
        Func<IReadOnlyList<double>, IReadOnlyList<double>, double> Model)> All =
    [
        ("Misra1a", "lower", (b, x) => b[0] * (1 - Exp(-b[1] * x[0]))),
        ("Chwirut2", "lower", Chwirut),
        ("Chwirut1", "lower", Chwirut),
        ("Lanczos3", "lower", Lanczos),
        ("Gauss1", "lower", Gauss),
        ("Gauss2", "lower", Gauss),
        ("DanWood", "lower", (b, x) => b[0] * Pow(x[0], b[1])),
        ("Misra1b", "lower", (b, x) => b[0] * (1 - Pow(1 + (b[1] * x[0] / 2), -2))),
        ("Kirby2", "average", (b, x) =>
            (b[0] + (b[1] * x[0]) + (b[2] * x[0] * x[0])) / (1 + (b[3] * x[0]) + (b[4] * x[0] * x[0]))),
        ("Hahn1", "average", CubicOverCubic),
        ("Nelson", "average", (b, x) => b[0] - (b[1] * x[0] * Exp(-b[2] * x[1]))),
        ("MGH17", "average", (b, x) => b[0] + (b[1] * Exp(-x[0] * b[3])) + (b[2] * Exp(-x[0] * b[4]))),
        ("Lanczos1", "average", Lanczos),
        ("Lanczos2", "average", Lanczos),
        ("Gauss3", "average", Gauss),
        ("Misra1c", "average", (b, x) => b[0] * (1 - Pow(1 + (2 * b[1] * x[0]), -0.5))),
        ("Misra1d", "average", (b, x) => b[0] * b[1] * x[0] / (1 + (b[1] * x[0]))),
        ("Roszman1", "average", (b, x) => b[0] - (b[1] * x[0]) - (Atan(b[2] / (x[0] - b[3])) / PI)),
        ("ENSO", "average", (b, x) =>
            b[0] + (b[1] * Cos(2 * PI * x[0] / 12)) + (b[2] * Sin(2 * PI * x[0] / 12))
            + (b[4] * Cos(2 * PI * x[0] / b[3])) + (b[5] * Sin(2 * PI * x[0] / b[3]))
            + (b[7] * Cos(2 * PI * x[0] / b[6])) + (b[8] * Sin(2 * PI * x[0] / b[6]))),
        ("MGH09", "higher", (b, x) =>
            b[0] * ((x[0] * x[0]) + (x[0] * b[1])) / ((x[0] * x[0]) + (x[0] * b[2]) + b[3])),
        ("Thurber", "higher", CubicOverCubic),
        ("BoxBOD", "higher", (b, x) => b[0] * (1 - Exp(-b[1] * x[0]))),
        ("Rat42", "higher", (b, x) => b[0] / (1 + Exp(b[1] - (b[2] * x[0])))),
        ("MGH10", "higher", (b, x) => b[0] * Exp(b[1] / (x[0] + b[2]))),
        ("Eckerle4", "higher", (b, x) => b[0] / b[1] * Exp(-(x[0] - b[2]) * (x[0] - b[2]) / (2 * b[1] * b[1]))),
        ("Rat43", "higher", (b, x) => b[0] / Pow(1 + Exp(b[1] - (b[2] * x[0])), 1 / b[3])),
        ("Bennett5", "higher", (b, x) => b[0] * Pow(b[1] + x[0], -1 / b[2])),
    ];

    private readonly string _name;
    private readonly (string Quantity, string Start1, string Start2, string Estimate, string Deviation)[] _certified;

    public NistNonlinearSet(string name)
    {
        _name = name;
        var table = ReferenceTable.Read("nist/nonlinear-certified.csv");
        string[] quantities = table.Texts("quantity"), sets = table.Texts("set"), deviations = table.Texts("deviation");
        string[] starts1 = table.Texts("start 1"), starts2 = table.Texts("start 2");
        string[] estimates = table.Texts("estimate");
        _certified = [.. Enumerable.Range(0, table.RowCount).Where(i => sets[i] == name)
            .Select(i => (quantities[i], starts1[i], starts2[i], estimates[i], deviations[i]))];
    }

    public double SumOfSquares => ReferenceTable.Number(
        _certified.Single(row => row.Quantity == "residual sum of squares").Estimate);

    private (string Quantity, string Start1, string Start2, string Estimate, string Deviation)[] Parameters =>
        [.. _certified.Where(row => row.Quantity[0] == 'b')];

    /// <summary>The fit from NIST's first or second start.</summary>
    public Attempt<NonlinearFit> Fit(int start)
    {
        var table = ReferenceTable.Read("nist/nonlinear.csv");
        string[] sets = table.Texts("set"), ys = table.Texts("y"), x1 = table.Texts("x1"), x2 = table.Texts("x2");
        int[] rows = [.. Enumerable.Range(0, table.RowCount).Where(i => sets[i] == _name)];
        double[] Of(string[] texts) => [.. rows.Select(i => ReferenceTable.Number(texts[i]))];
        List<DesignColumn> predictors = [new("x1", Of(x1))];
        if (_name == "Nelson")
        {
            predictors.Add(new DesignColumn("x2", Of(x2)));
        }

        // NIST models the logarithm of Nelson's response.
        double[] response = _name == "Nelson" ? [.. Of(ys).Select(y => Log(y))] : Of(ys);
        return NonlinearLeastSquares.Fit(
            new NonlinearModel(Parameters.Select(p => p.Quantity), All.Single(set => set.Name == _name).Model),
            new Design(predictors),
            response,
            [.. Parameters.Select(p => ReferenceTable.Number(start == 1 ? p.Start1 : p.Start2))]);
    }

    public double EstimateDigits(NonlinearFit fit) => fit.Terms.Zip(
        Parameters, (term, p) => Digits(term.Estimate, p.Estimate)).Min();

    public double DeviationDigits(NonlinearFit fit) => fit.Terms.Zip(
        Parameters, (term, p) => Digits(term.StandardError, p.Deviation)).Min();

    /// <summary>NIST certifies 11 digits, so no more are counted.</summary>
    private static double Digits(double actual, string certified) =>
        Min(11, Close.Digits(actual, ReferenceTable.Number(certified)));

    private static double Chwirut(IReadOnlyList<double> b, IReadOnlyList<double> x) =>
        Exp(-b[0] * x[0]) / (b[1] + (b[2] * x[0]));

    private static double Lanczos(IReadOnlyList<double> b, IReadOnlyList<double> x) =>
        (b[0] * Exp(-b[1] * x[0])) + (b[2] * Exp(-b[3] * x[0])) + (b[4] * Exp(-b[5] * x[0]));

    private static double Gauss(IReadOnlyList<double> b, IReadOnlyList<double> x) =>
        (b[0] * Exp(-b[1] * x[0]))
        + (b[2] * Exp(-(x[0] - b[3]) * (x[0] - b[3]) / (b[4] * b[4])))
        + (b[5] * Exp(-(x[0] - b[6]) * (x[0] - b[6]) / (b[7] * b[7])));

    private static double CubicOverCubic(IReadOnlyList<double> b, IReadOnlyList<double> x) =>
        (b[0] + (x[0] * (b[1] + (x[0] * (b[2] + (x[0] * b[3]))))))
        / (1 + (x[0] * (b[4] + (x[0] * (b[5] + (x[0] * b[6]))))));
}
