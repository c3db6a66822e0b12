using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>The models of the goals' results, and draws of all that is uncertain about them.</summary>
internal sealed class TuneModel
{
    private readonly IReadOnlyList<TuneGoal> _goals;
    private readonly IReadOnlyList<Interval> _within;
    private readonly JointDraws _draws;

    private TuneModel(IReadOnlyList<FittedModel> models, IReadOnlyList<TuneGoal> goals, IReadOnlyList<Measure> axes, JointDraws draws)
    {
        (Models, _goals, Axes, _draws) = (models, goals, axes, draws);
        _within = [.. goals.Select(goal => goal.Within)];
    }

    /// <summary>The fitted models, one for each goal.</summary>
    public IReadOnlyList<FittedModel> Models { get; }

    /// <summary>The settings that they speak of.</summary>
    public IReadOnlyList<Measure> Axes { get; }

    /// <summary>The draws.</summary>
    public JointDraws Draws => _draws;

    /// <summary>Draws for fitted models.</summary>
    public static Attempt<TuneModel> Draw(
        IReadOnlyList<FittedModel> models, IReadOnlyList<TuneGoal> goals, IReadOnlyList<Measure> axes, int draws, int seed)
    {
        Bake[] all = [.. models.SelectMany(model => model.Selection.Bakes).Distinct()];
        var places = all.Index().ToDictionary(bake => bake.Item, bake => bake.Index);
        return JointRegression
            .Draw([.. models.Zip(goals, (model, goal) => Response(model, goal.Tuned, places))], draws, seed)
            .Select(drawn => new TuneModel(models, goals, axes, drawn));
    }

    /// <summary>The same draws for goals with other bounds; a null goal is met by everything.</summary>
    public TuneModel With(Func<TuneGoal, TuneGoal?> change)
    {
        return new TuneModel(Models, _goals, Axes, _draws, [.. _goals.Select(goal => change(goal)?.Within ?? Anything)]);
    }

    /// <summary>The chance of all goals, by draw.</summary>
    public double[] Chances(double[] place) => _draws.Probabilities(Rows(place), _within);

    /// <summary>The chance of all goals.</summary>
    public double Chance(double[] place) => Chances(place).Average();

    /// <summary>The row of one model.</summary>
    public IReadOnlyList<double> Row(FittedModel model, double[] place) => model.Row(measure => ValueOf(place, measure));

    private static Interval Anything => new(double.NegativeInfinity, double.PositiveInfinity);

    private TuneModel(
        IReadOnlyList<FittedModel> models, IReadOnlyList<TuneGoal> goals, IReadOnlyList<Measure> axes, JointDraws draws, IReadOnlyList<Interval> within)
        : this(models, goals, axes, draws) => _within = within;

    private IReadOnlyList<IReadOnlyList<double>> Rows(double[] place) => [.. Models.Select(model => Row(model, place))];

    private double? ValueOf(double[] place, Measure measure)
    {
        for (var axis = 0; axis < Axes.Count; axis++)
        {
            if (Axes[axis] == measure)
            {
                return place[axis];
            }
        }

        return null;
    }

    private static JointResponse Response(FittedModel model, TunedResult result, Dictionary<Bake, int> places)
    {
        var fit = (LeastSquaresFit)model.Fit;
        string[] blocks = [.. model.Blocks.SelectMany(block => block.Columns).Select(column => column.Name)];
        return new JointResponse(model.Question.Name, fit.Design, fit.Response, [.. model.Selection.Bakes.Select(bake => places[bake])])
        {
            Priors =
            [
                .. new IReadOnlyList<NormalPrior>[]
                {
                    [.. result.Priors.Where(prior => fit.Design.Names.Contains(prior.Column))],
                    [.. blocks.Select(block => new NormalPrior(block, 0, result.BlockSd))],
                }.Where(group => group.Count > 0),
            ],

            // Who bakes next isn't known, so the next bake's luck includes it.
            Varying = blocks,
        };
    }
}
