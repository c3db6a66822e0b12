using BakeInsights.Inference;

namespace BakeInsights;

/// <summary>Both questions asked of a journal of any length.</summary>
/// <param name="Reading">What came of reading it.</param>
/// <param name="RiseTime">What it says about rise time.</param>
/// <param name="LoafVolume">What it says about loaf volume.</param>
public sealed record JournalFit(JournalReading Reading, Attempt<RiseTimeAnswer> RiseTime, Attempt<LoafVolumeAnswer> LoafVolume)
{
    /// <summary>
    /// Up to this many bakes are kept, and the answers name single ones. Past it, the terms are those that every
    /// tenth of the first bakes supports, and all bakes go into running sums: the memory stays the same however long
    /// the journal is.
    /// </summary>
    public const int KeptBakes = 50_000;

    // Five thousand bakes show what a journal varies as well as fifty thousand do, in a tenth of the time.
    private const int SampleStep = 10;

    /// <summary>Reads a journal once and asks both questions of it.</summary>
    /// <param name="path">A folder with <c>bakes*.csv</c> in it, or one CSV file.</param>
    /// <exception cref="JournalFileException">The path, or a file of the journal, can't be read at all.</exception>
    public static JournalFit Of(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var riseTime = new GrowingAnswer(BakeInsights.RiseTime.Question);
        var loafVolume = new GrowingAnswer(BakeInsights.LoafVolume.Question);
        List<Bake>? kept = [];
        using var passing = new PassingBakes(bake =>
        {
            riseTime.Add(bake);
            loafVolume.Add(bake);
        });
        var reading = BakeStream.Read(
            path,
            keepsTexts: false,
            row =>
            {
                if (kept is null)
                {
                    passing.Add(row);
                    return;
                }

                kept.Add(new Bake(row.Copy()));
                if (kept.Count > KeptBakes)
                {
                    riseTime.Start(kept);
                    loafVolume.Start(kept);
                    kept = null;

                    // The first bakes have lived long enough to be taken for permanent, and little is allocated from
                    // here on: without a word their memory would be kept to the end.
                    GC.Collect();
                }
            },
            named: KeptBakes + 1).Reading;
        passing.Finish();
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
            _start = FittedModel.MakeFromSums(question, [.. first.Where((_, place) => place % SampleStep == 0)]);
            _running = _start.Match<RunningModel?>(model => new RunningModel(model, first), _ => null);
        }

        public void Add(Bake bake) => _running?.Add(bake);

        public Attempt<FittedModel> Finish(IReadOnlyList<Bake>? kept) =>
            kept is not null ? FittedModel.Make(question, kept) : _running?.Finish() ?? _start!;
    }
}
