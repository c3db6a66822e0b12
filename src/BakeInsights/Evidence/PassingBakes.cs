using System.Collections.Concurrent;

namespace BakeInsights;

/// <summary>
/// Hands bakes that nobody keeps to a second thread, a batch at a time, so that one batch is computed with while the
/// next is read. Their order stays, so the sums are the same on one core and on many.
/// </summary>
internal sealed class PassingBakes : IDisposable
{
    private const int BatchSize = 1_024;
    private const int Batches = 4;

    private readonly BlockingCollection<Batch> _free = [];
    private readonly BlockingCollection<Batch> _full = [];
    private readonly Task _work;
    private Batch? _filling;

    /// <summary>Starts the second thread.</summary>
    /// <param name="take">Takes each bake, which is gone after it.</param>
    public PassingBakes(Action<Bake> take)
    {
        for (var i = 0; i < Batches; i++)
        {
            _free.Add(new Batch());
        }

        _work = Task.Factory.StartNew(() => Work(take), TaskCreationOptions.LongRunning);
    }

    /// <summary>Hands a bake on.</summary>
    public void Add(RowValues row)
    {
        _filling ??= _free.Take();
        row.CopyTo(_filling.Rows[_filling.Count++]);
        if (_filling.Count == BatchSize)
        {
            HandOn();
        }
    }

    /// <summary>Waits until every bake has been taken.</summary>
    public void Finish()
    {
        HandOn();
        _full.CompleteAdding();
        _work.GetAwaiter().GetResult();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        if (!_full.IsAddingCompleted)
        {
            _full.CompleteAdding();
        }
    }

    private void HandOn()
    {
        if (_filling is not null)
        {
            _full.Add(_filling);
            _filling = null;
        }
    }

    private void Work(Action<Bake> take)
    {
        try
        {
            foreach (var batch in _full.GetConsumingEnumerable())
            {
                for (var i = 0; i < batch.Count; i++)
                {
                    take(batch.Bakes[i]);
                }

                batch.Count = 0;
                _free.Add(batch);
            }
        }
        finally
        {
            // Whoever waits for a free batch must not wait for ever.
            _free.CompleteAdding();
        }
    }

    /// <summary>Rows that are filled over and over, and the bakes that they are.</summary>
    private sealed class Batch
    {
        public Batch()
        {
            Rows = [.. Enumerable.Range(0, BatchSize).Select(_ => new RowValues(BakeColumns.Layout))];
            Bakes = [.. Rows.Select(row => new Bake(row))];
        }

        public RowValues[] Rows { get; }

        public Bake[] Bakes { get; }

        public int Count { get; set; }
    }
}
