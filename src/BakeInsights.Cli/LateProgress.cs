namespace BakeInsights.Cli;

/// <summary>A progress line for work that is often done at once: it stays empty for the first half second.</summary>
internal sealed class LateProgress : IDisposable
{
    private const int QuietMs = 500;

    private readonly Lock _lock = new();
    private readonly ProgressLine _line = new();
    private readonly Timer _timer;
    private string _text = "";
    private bool _isShown;

    /// <summary>Starts the half second.</summary>
    public LateProgress() => _timer = new Timer(_ => Begin(), null, QuietMs, Timeout.Infinite);

    /// <summary>Says what is being done.</summary>
    public void Show(string text)
    {
        lock (_lock)
        {
            _text = text;
            if (_isShown)
            {
                _line.Show(text);
            }
        }
    }

    /// <summary>Leaves the line empty for what comes next.</summary>
    public void Dispose()
    {
        _timer.Dispose();
        lock (_lock)
        {
            _isShown = false;
            _line.Dispose();
        }
    }

    private void Begin()
    {
        lock (_lock)
        {
            _isShown = true;
            _line.Show(_text);
        }
    }
}
