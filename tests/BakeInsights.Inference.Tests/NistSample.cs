namespace BakeInsights.Inference.Tests;

/// <summary>A univariate set of the NIST Statistical Reference Datasets with the digits reached.</summary>
internal sealed class NistSample
{
    public static readonly IReadOnlyList<string> All =
        ["Lew", "Lottery", "NumAcc1", "NumAcc2", "NumAcc3", "PiDigits"];

    private readonly Dictionary<string, double> _certified;
    private readonly double[] _y;

    public NistSample(string name)
    {
        var values = ReferenceTable.Read("nist/certified-univariate.csv");
        _certified = values.Texts("set").Zip(values.Texts("quantity"), values.Numbers("value"))
            .Where(row => row.First == name)
            .ToDictionary(row => row.Second, row => row.Third);
        _y = ReferenceTable.Read($"nist/{name}.csv").Numbers("y");
        Moments = SampleMoments.Of(_y);
    }

    public SampleMoments Moments { get; }

    public double MeanDigits => Close.Digits(Moments.Mean, _certified["mean"]);

    public double SpreadDigits => Close.Digits(Moments.StandardDeviation!.Value, _certified["SD"]);

    public double SerialDigits => Close.Digits(Moments.SerialCorrelation!.Value, _certified["serial correlation"]);

    /// <summary>The digits that the exact spread of the data as rounded to doubles shares with the certified one.</summary>
    public double SpreadLimit => Close.Digits(ExactSpread(), _certified["SD"]);

    /// <summary>The digits that the spread shares with the exact one of the very same doubles.</summary>
    public double SpreadDigitsAgainstExact => Close.Digits(Moments.StandardDeviation!.Value, ExactSpread());

    private double ExactSpread()
    {
        Fraction[] all = [.. _y.Select(y => (Fraction)y)];
        var mean = all.Aggregate((Fraction)0, (sum, y) => sum + y) / all.Length;
        var squares = all.Aggregate((Fraction)0, (sum, y) => sum + ((y - mean) * (y - mean)));
        return Math.Sqrt((squares / (all.Length - 1)).ToDouble());
    }
}
