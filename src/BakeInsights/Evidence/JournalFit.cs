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
    public const int KeptBakes = JournalReader.KeptBakes;

    // Five thousand bakes show what a journal varies as well as fifty thousand do, in a tenth of the time.
    private const int SampleStep = 10;

    /// <summary>Reads a journal once and asks both questions of it.</summary>
    /// <param name="path">A folder with <c>bakes*.csv</c> in it, or one CSV file.</param>
    /// <param name="hidesNames">Whether bakers and judges are replaced by labels (<see cref="HiddenNames"/>).</param>
    /// <exception cref="JournalFileException">The path, or a file of the journal, can't be read at all.</exception>
    public static JournalFit Of(string path, bool hidesNames = false)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        var riseTime = new GrowingAnswer(BakeInsights.RiseTime.Question);
        var loafVolume = new GrowingAnswer(BakeInsights.LoafVolume.Question);
        var kept = new KeptRows();
        using var passing = new PassingBakes(bake =>
        {
            riseTime.Add(bake);
            loafVolume.Add(bake);
        });
        var stream = BakeStream.Read(path, textsOf: KeptBakes + 1, row =>
        {
            if (kept.All is null)
            {
                passing.Add(row);
                return;
            }

            kept.Add(row, Start);
        });
        passing.Finish();
        if (kept.All is not { } rows)
        {
            SideFiles.PassOver(path, stream.Log);

            // The bakes are gone, and their names with them; only what was said of their rows may hold a name.
            var reading = hidesNames ? JournalReading.Of(path, hidesNames: true) : stream.Reading;
            return new(
                reading,
                riseTime.Finish().Select(model => new RiseTimeAnswer(model)),
                loafVolume.Finish().Select(model => new LoafVolumeAnswer(model)));
        }

        var journal = JournalReader.Assemble(path, rows, stream);
        journal = hidesNames ? HiddenNames.Of(journal).In(journal) : journal;
        return new(journal.Reading, BakeInsights.RiseTime.Ask(journal.Bakes), BakeInsights.LoafVolume.Ask(journal.Bakes));

        void Start(IReadOnlyList<RowValues> first)
        {
            Bake[] bakes = [.. first.Select(one => new Bake(one))];
            riseTime.Start(bakes);
            loafVolume.Start(bakes);
        }
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

        public Attempt<FittedModel> Finish() => _running?.Finish() ?? _start!;
    }
}
