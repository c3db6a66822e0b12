using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Both questions asked of a journal of any length.</summary>
/// <param name="Reading">What came of reading it.</param>
/// <param name="RiseTime">What it says about rise time.</param>
/// <param name="LoafVolume">What it says about loaf volume.</param>
public sealed record JournalFit(JournalReading Reading, Attempt<RiseTimeAnswer> RiseTime, Attempt<LoafVolumeAnswer> LoafVolume)
{
    /// <summary>
    /// Up to this many bakes are kept, and the answers name single ones. Past it, the terms are those that the first
    /// bakes supported, and each further bake goes into running sums: the memory stays the same however long the
    /// journal is.
    /// </summary>
    public const int KeptBakes = 50_000;

    /// <summary>Reads a journal once and asks both questions of it.</summary>
    /// <param name="path">A folder with <c>bakes*.csv</c> in it, or one CSV file.</param>
    /// <exception cref="JournalFileException">The path, or a file of the journal, can't be read at all.</exception>
    public static JournalFit Of(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var riseTime = new GrowingAnswer(BakeInsights.RiseTime.Question);
        var loafVolume = new GrowingAnswer(BakeInsights.LoafVolume.Question);
        List<Bake>? kept = [];
        Bake? passing = null;
        var reading = BakeStream.Read(path, keepsTexts: false, row =>
        {
            if (kept is null)
            {
                passing ??= new Bake(row);
                riseTime.Add(passing);
                loafVolume.Add(passing);
                return;
            }

            kept.Add(new Bake(row.Copy()));
            if (kept.Count > KeptBakes)
            {
                riseTime.Start(kept);
                loafVolume.Start(kept);
                kept = null;
            }
        }).Reading;
        return new(
            reading,
            riseTime.Finish(kept).Select(model => new RiseTimeAnswer(model)),
            loafVolume.Finish(kept).Select(model => new LoafVolumeAnswer(model)));
    }

    /// <summary>One question's model while bakes come in.</summary>
    private sealed class GrowingAnswer(Question question)
    {
        private Attempt<FittedModel>? _start;
        private RunningModel? _running;

        /// <summary>Fits the first bakes, which are about to be forgotten.</summary>
        public void Start(IReadOnlyList<Bake> first)
        {
            _start = FittedModel.Make(question, first);
            _running = _start.Match<RunningModel?>(model => new RunningModel(model, first), _ => null);
        }

        public void Add(Bake bake) => _running?.Add(bake);

        public Attempt<FittedModel> Finish(IReadOnlyList<Bake>? kept) =>
            kept is not null ? FittedModel.Make(question, kept) : _running?.Finish() ?? _start!;
    }
}
