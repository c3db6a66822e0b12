using Plotly.NET;

namespace BakeInsights.Reports;

/// <summary>Each judge's scores against the mean of the others': on the line judges agree, above it one is milder.</summary>
public static class JudgesChart
{
    private const double SmallestMark = 7;
    private const double Outline = 2;

    /// <summary>
    /// The scores of one attribute; the larger the mark, the more bakes got it. More judges than there are colours share
    /// one, and are named beside the pointer.
    /// </summary>
    /// <param name="attribute">The attribute, of which judges scored the same bakes.</param>
    /// <exception cref="ArgumentException">The judges' agreement is not known, so there is nothing to draw.</exception>
    public static GenericChart Of(AttributeScores attribute)
    {
        ArgumentNullException.ThrowIfNull(attribute);
        if (!attribute.Agreement.TryGet(out var judges, out var problem))
        {
            throw new ArgumentException(problem.Message, nameof(attribute));
        }

        var values = judges.Points.SelectMany(point => new[] { point.Own, point.Others }).ToList();
        double[] ends = [attribute.Low ?? values.Min(), attribute.High ?? values.Max()];
        var byJudge = judges.Points.GroupBy(point => point.Judge).OrderBy(own => own.Key, StringComparer.Ordinal).ToList();
        var marks = byJudge.Count <= Palette.Series.Count
            ? byJudge.Select((own, place) => Marks(Traces.Words(own.Key), own, Palette.Series[place]))
            : [Marks("a judge", judges.Points, Palette.Series[0])];
        return ChartFrame.Around(
            $"How the judges scored the {attribute.Noun} of the same bakes",
            "Mean score of the other judges",
            "Judge's own score",
            [Traces.Line("full agreement", ends.Cast<object>(), ends, Palette.Ink, "dash"), .. marks]);
    }

    private static Trace Marks(string name, IEnumerable<JudgePoint> points, (string Colour, string Marker) look)
    {
        var spots = points.GroupBy(point => (point.Others, point.Own)).OrderBy(spot => spot.Key).ToList();
        var trace = Traces.Points(
            name,
            spots.Select(spot => (object)spot.Key.Others),
            spots.Select(spot => spot.Key.Own),
            spots.Select(spot => Traces.Words(
            [
                $"Own score {Figures.Shortest(spot.Key.Own)}, the others' mean {Figures.Shortest(spot.Key.Others)}",
                .. spot.GroupBy(point => point.Judge).Select(own => $"{own.Key}: {string.Join(", ", own.Select(point => point.Bake.Id))}"),
            ])),
            look);
        trace.SetProperty("marker", new Dictionary<string, object>
        {
            ["color"] = look.Colour,

            // Judges often meet on one spot: an outline lets the other's be seen.
            ["symbol"] = look.Marker + "-open",

            // A mark's area, not its width, is what eyes compare.
            ["size"] = spots.Select(spot => SmallestMark * Math.Sqrt(spot.Count())).ToArray(),
            ["line"] = new Dictionary<string, object> { ["width"] = Outline },
        });
        return trace;
    }
}
