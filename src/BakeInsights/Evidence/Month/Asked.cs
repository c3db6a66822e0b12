namespace BakeInsights;

/// <summary>The questions of a month while they are being asked: each ends among the answers or among the open ones.</summary>
internal sealed class Asked
{
    private readonly List<Finding> _answers = [];
    private readonly List<OpenQuestion> _open = [];

    /// <summary>The answers, not yet judged.</summary>
    public IReadOnlyList<Finding> Answers => _answers;

    /// <summary>The questions without an answer.</summary>
    public IReadOnlyList<OpenQuestion> Open => _open;

    /// <summary>Adds an answer.</summary>
    public void Add(Finding answer) => _answers.Add(answer);

    /// <summary>Adds answers, and questions without one.</summary>
    public void Add(IEnumerable<Finding> answers, IEnumerable<OpenQuestion> open)
    {
        _answers.AddRange(answers);
        _open.AddRange(open);
    }

    /// <summary>Adds a question without an answer.</summary>
    public void Add(OpenQuestion question) => _open.Add(question);
}
