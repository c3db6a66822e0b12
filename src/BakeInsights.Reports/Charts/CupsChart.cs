using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>What cups of flour weigh by the way they are filled.</summary>
public static class CupsChart
{
    private const string Stroke = "line-ew";
    private const int StrokePixels = 28;

    /// <summary>
    /// Each weighed cup, the mean over people with its 95 % interval, and the published weight beside. Null where no cup of
    /// flour was weighed.
    /// </summary>
    public static GenericChart? Of(IReadOnlyList<WeighedCup> cups, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(cups);
        var methods = CupsByMethod.Of(cups);
        if (methods.Count == 0)
        {
            return null;
        }

        var figures = new Figures(units);
        var unit = figures.UnitOf(Dimension.Mass);
        var weighed = methods.SelectMany(method => method.Cups.Select(cup => (Name: NameOf(method.Method), Cup: cup))).ToList();
        var published = methods.Where(method => method.Published is not null).ToList();
        var means = methods.Select(method => (
            unit.Value(method.Mean.Low ?? method.Mean.Value), unit.Value(method.Mean.Value), unit.Value(method.Mean.High ?? method.Mean.Value)));
        return ChartFrame.Around(
            Traces.Words(string.Join(". ", methods.Select(method => Words(method, figures)))),
            CategoryTraces.Axis("How the cup was filled", methods.Select(method => NameOf(method.Method))),
            figures.TitleOf("A cup of flour", Dimension.Mass),
            CategoryTraces.Points(
                "weighed cup", weighed.Select(one => one.Name), weighed.Select(one => unit.Value(one.Cup.GramsPerCup)),
                weighed.Select(one => Traces.Words(one.Cup.Measurer, Weight(one.Cup.GramsPerCup, figures))), Palette.Series[2]),
            Traces.Points(
                    "mean over people (95 %)", methods.Select(method => NameOf(method.Method)), methods.Select(method => unit.Value(method.Mean.Value)),
                    methods.Select(method => Traces.Words(Words(method, figures))), Palette.Series[0])
                .WithSpans(means, Palette.Series[0].Colour),
            Published(published, figures));
    }

    private static Trace Published(IReadOnlyList<CupsByMethod> published, Figures figures)
    {
        var unit = figures.UnitOf(Dimension.Mass);
        var trace = Traces.Points(
            "published", published.Select(method => NameOf(method.Method)), published.Select(method => unit.Value(method.Published!.GramsPerCup)),
                published.Select(method => Traces.Words(Weight(method.Published!.GramsPerCup, figures), method.Published.Source)), (Palette.Ink, Stroke));
        trace.SetProperty("marker", new Dictionary<string, object>
        {
            ["color"] = Palette.Ink, ["symbol"] = Stroke, ["size"] = StrokePixels, ["line"] = new Dictionary<string, object> { ["color"] = Palette.Ink, ["width"] = 2.5 },
        });
        return trace;
    }

    private static string Words(CupsByMethod method, Figures figures)
    {
        var unit = figures.UnitOf(Dimension.Mass);
        var interval = method.Mean is { Low: { } low, High: { } high }
            ? $"95 % interval {Figures.Range(unit.Value(low), unit.Value(high), Digits(unit))}, "
            : "";
        var people = method.People == 1 ? "1 person" : $"{method.People} people";
        var beside = method.Published is { } known ? $"; {Weight(known.GramsPerCup, figures)} published" : "";
        return $"A cup of flour, {NameOf(method.Method)}: {Weight(method.Mean.Value, figures)} here "
            + $"({interval}{JournalView.Count(method.Cups.Count, "cup")} of {people}){beside}";
    }

    private static string Weight(double grams, Figures figures)
    {
        var unit = figures.UnitOf(Dimension.Mass);
        return $"{Figures.Rounded(unit.Value(grams), Digits(unit))} {unit.Label}";
    }

    // Cups differ by a few grams, which ounces show in their second decimal.
    private static int Digits(DisplayUnit unit) => unit.Decimals == 0 ? 0 : unit.Decimals + 1;

    private static string NameOf(FlourMeasure method) => method switch
    {
        FlourMeasure.Spooned => "spooned",
        FlourMeasure.Scooped => "scooped",
        FlourMeasure.Sifted => "sifted",
        FlourMeasure.CupUnknown => "way not written",
        _ => throw new ArgumentOutOfRangeException(nameof(method), method, "No way of filling a cup."),
    };
}
