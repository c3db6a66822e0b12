namespace BakeInsights;

/// <summary>How far the judges of one attribute agree, a bake counting once however many loaves were scored.</summary>
public sealed class JudgesAgreement
{
    /// <summary>
    /// Below this the agreement of the judges' mean is called poor: Koo and Li (2016), Journal of Chiropractic Medicine
    /// 15, 155-163. It means that half of the variance of their mean scores is the judges' own.
    /// </summary>
    public const double TooLittle = 0.5;

    private readonly Estimate? _panel;

    internal JudgesAgreement(JudgeTable table, Estimate oneJudge, Estimate? panel, Estimate? same, double? concordance, IReadOnlyList<JudgePair> pairs)
    {
        (Judges, Bakes, OneJudge, _panel, SameScore, Concordance, Pairs) = (table.Judges, table.Bakes, oneJudge, panel, same, concordance, pairs);
        Points = table.Points;
        Standings = table.Standings;
    }

    /// <summary>The judges compared: those who scored the most bakes together.</summary>
    public IReadOnlyList<string> Judges { get; }

    /// <summary>The bakes that all of them scored.</summary>
    public IReadOnlyList<Bake> Bakes { get; }

    /// <summary>
    /// The intraclass correlation of one judge's scores, a steadily stricter judge being no disagreement: case 3 of
    /// Shrout and Fleiss (1979), consistency. Without an interval where the judges agree on every difference.
    /// </summary>
    public Estimate OneJudge { get; }

    /// <summary>The same of the mean of the judges, which is what a model of the scores rests on; null where bakes don't differ in it at all.</summary>
    public Estimate? AllJudges => _panel;

    /// <summary>The intraclass correlation where stricter counts as disagreement: case 2 of Shrout and Fleiss (1979), one judge.</summary>
    public Estimate? SameScore { get; }

    /// <summary>Kendall's W of the judges' rankings: 1 if all rank the bakes alike; null where nobody ranks them.</summary>
    public double? Concordance { get; }

    /// <summary>Each two judges, where their scores are whole numbers of a scale of at most ten steps.</summary>
    public IReadOnlyList<JudgePair> Pairs { get; }

    /// <summary>Each score beside the mean of the other judges' of the same bake, of all named judges.</summary>
    public IReadOnlyList<JudgePoint> Points { get; }

    /// <summary>Each judge beside the others.</summary>
    public IReadOnlyList<JudgeStanding> Standings { get; }

    /// <summary>Whether the scores deserve a model.</summary>
    public AgreementVerdict Verdict => _panel is not { } panel || panel.Value < TooLittle ? AgreementVerdict.TooLittle
        : panel.Low is null or >= TooLittle ? AgreementVerdict.Enough
        : AgreementVerdict.Unsettled;
}
