using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The bakes that would narrow an open question of a journal most.</summary>
public sealed record NextBakes
{
    // Nine of ten outcomes: our own choice.
    private const double Worst = 0.9;

    private NextBakes(NarrowedQuestion question, bool wasChosen, NextChoice choice, IReadOnlyList<PlannedBake> bakes, IReadOnlyList<SettingLimits> limits)
    {
        (Question, QuestionWasChosen, Bakes, Earlier) = (question, wasChosen, bakes, choice.Model.Bakes.Count);
        (DoughTemperatureC, HydrationPct, YeastPct) = (limits[0], limits[1], limits[2]);
        Terms = [.. choice.Model.Terms.Select(term => term.Name)];
        StillTogether = [.. choice.StillTogether.Select(pair => $"{pair.One.Words} and {pair.Other.Words}")];
    }

    /// <summary>The question.</summary>
    public NarrowedQuestion Question { get; }

    /// <summary>Whether the journal chose it, as the one most open, rather than the wish.</summary>
    public bool QuestionWasChosen { get; }

    /// <summary>The bakes, in an order drawn by lot.</summary>
    public IReadOnlyList<PlannedBake> Bakes { get; }

    /// <summary>How many earlier bakes were counted in.</summary>
    public int Earlier { get; }

    /// <summary>The terms of the model that they are planned for.</summary>
    public IReadOnlyList<string> Terms { get; }

    /// <summary>The dough temperatures that were allowed, in °C.</summary>
    public SettingLimits DoughTemperatureC { get; }

    /// <summary>The hydrations that were allowed, in percent.</summary>
    public SettingLimits HydrationPct { get; }

    /// <summary>The yeast that was allowed, in percent as instant.</summary>
    public SettingLimits YeastPct { get; }

    /// <summary>Pairs of settings that these bakes still leave hard to tell apart; usually none.</summary>
    public IReadOnlyList<string> StillTogether { get; }

    /// <summary>How far they may be expected to narrow the answer; null where <see cref="WhyNoForecast"/> says why not.</summary>
    public Narrowing? Narrowing { get; private init; }

    /// <summary>Why there is no forecast; empty if there is one.</summary>
    public string WhyNoForecast { get; private init; } = "";

    /// <summary>
    /// The bakes that the wished certainty takes, if half of the outcomes are to reach it; 0 if it is reached already; null where none was wished, where
    /// there is no forecast, or where it takes more than <see cref="MostBakesCounted"/>.
    /// </summary>
    public int? BakesUntil { get; private init; }

    /// <summary>Bakes for a certainty are counted up to here.</summary>
    public const int MostBakesCounted = NextForecast.MostBakes;

    /// <summary>The wished certainty, half an interval in the question's unit.</summary>
    public double? Until { get; private init; }

    /// <summary>Why a bake has no water temperature; empty if each has.</summary>
    public string WhyNoWater { get; private init; } = "";

    /// <summary>Plans the next bakes.</summary>
    /// <remarks>
    /// Runs are chosen by exchange so that what the question needs known has the smallest variance on average over all that
    /// the earlier bakes leave open, the earlier bakes counted in (<see cref="OptimalDesign"/>). Where two settings would
    /// still go together, the runs with the largest determinant are taken.
    /// </remarks>
    /// <param name="bakes">The journal's bakes.</param>
    /// <param name="wish">What is wished.</param>
    /// <param name="seed">The seed of the order and of the made-up outcomes.</param>
    /// <param name="progress">Told what is being done; null for nobody.</param>
    /// <returns>The plan, or the problem that says what would make one possible.</returns>
    public static Attempt<NextBakes> Plan(IReadOnlyList<Bake> bakes, NextBakesWish wish, int seed, Action<string>? progress = null)
    {
        ArgumentNullException.ThrowIfNull(bakes);
        ArgumentNullException.ThrowIfNull(wish);
        progress?.Invoke("Choosing the bakes");
        if (!Chosen(bakes, wish, seed).TryGet(out var made, out var problem))
        {
            return problem;
        }

        var (question, limits, choice) = made;
        var (waters, whyNoWater) = NextWater.Of(bakes, choice.Doughs);
        var order = Enumerable.Range(0, choice.Doughs.Count).ToArray();
        Shuffle(order, seed);
        PlannedBake[] planned =
        [
            .. order.Select((place, i) => new PlannedBake(
                i + 1, choice.Doughs[place][Measures.DoughTemperature]!.Value, choice.Doughs[place][Measures.Hydration]!.Value,
                choice.Doughs[place][Measures.Yeast]!.Value, waters[place])),
        ];
        var plan = new NextBakes(question, wish.Question is null, choice, planned, limits) { Until = wish.Until, WhyNoWater = whyNoWater };
        return Forecast(plan, choice, wish, limits[1], seed, progress);
    }

    /// <summary>The doughs alone, in no order.</summary>
    internal static Attempt<IReadOnlyList<DoughSettings>> Choose(IReadOnlyList<Bake> bakes, NextBakesWish wish, int seed) =>
        Chosen(bakes, wish, seed).Match<Attempt<IReadOnlyList<DoughSettings>>>(made => made.Choice.Doughs.ToArray(), problem => problem);

    private static Attempt<Made> Chosen(IReadOnlyList<Bake> bakes, NextBakesWish wish, int seed)
    {
        if (!NextLimits.Of(bakes, wish).TryGet(out var steps, out var problem))
        {
            return problem;
        }

        SettingLimits[] limits = [.. steps.Select(step => step.Limits)];
        var question = wish.Question ?? MostOpen(bakes, limits[1]);
        return NextLimits.Fixed(question, steps) is { } narrow
            ? narrow
            : NextChoice.Of(question, bakes, wish.Bakes, DoughSettings.MedianOf(bakes), steps, seed).Select(choice => new Made(question, limits, choice));
    }

    /// <summary>What is chosen before anything is forecast.</summary>
    private sealed record Made(NarrowedQuestion Question, IReadOnlyList<SettingLimits> Limits, NextChoice Choice);

    /// <summary>The question that the bakes leave most open, by how far its interval passes what a kitchen can use.</summary>
    private static NarrowedQuestion MostOpen(IReadOnlyList<Bake> bakes, SettingLimits hydration) => NarrowedQuestion.All.MaxBy(question =>
        NextModel.Of(question, bakes, 0, []).TryGet(out var model, out _)
            ? model.Fit is { } fit ? AnswerInterval.Of(question, fit, hydration).Half / question.Settled : double.MaxValue
            : question.Model.Exclusions[0].LeaveOut(bakes, []).Count == 0 ? double.MinValue : double.MaxValue)!;

    private static NextBakes Forecast(
        NextBakes plan, NextChoice choice, NextBakesWish wish, SettingLimits hydration, int seed, Action<string>? progress)
    {
        if (choice.Model.Fit is not { } fit)
        {
            return plan with
            {
                WhyNoForecast = "The journal's bakes are too few, or too alike, to answer this by themselves yet, so outcomes can't be made up from them.",
            };
        }

        progress?.Invoke("Making up outcomes");
        var forecast = new NextForecast(choice.Model, choice.Doughs, hydration, seed);
        var after = forecast.After(wish.Bakes);
        var now = AnswerInterval.Of(plan.Question, fit, hydration);
        return plan with
        {
            Narrowing = new Narrowing(
                now,
                after[NextForecast.Outcomes / 2].Half,
                after[(int)(Worst * NextForecast.Outcomes)].Half,
                (double)after.Count(interval => interval.IsOpen) / NextForecast.Outcomes),
            BakesUntil = wish.Until is { } half ? now.Half <= half && !now.IsOpen ? 0 : forecast.BakesUntil(half) : null,
        };
    }

    // Fisher and Yates: each order as likely as the others.
    private static void Shuffle(int[] places, int seed)
    {
        var draws = new Draws(seed, Draws.Purpose.Plans, NextForecast.Outcomes);
        for (var i = places.Length - 1; i > 0; i--)
        {
            var j = draws.Place(i + 1);
            (places[i], places[j]) = (places[j], places[i]);
        }
    }
}
