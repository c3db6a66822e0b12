using BakeInsights.Reports;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary><c>bakeinsights tune</c>: the house formula that meets a baker's wishes, with its chance.</summary>
internal sealed class TuneCommand : Command<TuneSettings>
{
    public override int Execute(CommandContext context, TuneSettings settings, CancellationToken cancellationToken)
    {
        var options = new TuneOptions(settings);
        var minutes = options.IsBackwards ? options.ReadyByMinutes() : 0;
        using var progress = new LateProgress();
        progress.Show("Reading the journal");
        var journal = Journal.Read(settings.RequirePath(), hidesNames: settings.HideNames);
        var wish = options.Wish(journal);
        progress.Show("Looking for the formula");
        var text = options.IsBackwards
            ? Backwards(settings, journal, wish, minutes, options.Units)
            : Tuned(settings, journal, wish, options.Units);
        progress.Dispose();
        Console.Out.Write(text);
        return ExitCode.Done;
    }

    private static string Tuned(TuneSettings settings, Journal journal, TuneWish wish, UnitSystem units)
    {
        var answer = Value(Tuning.Ask(journal.Bakes, wish, settings.Seed));
        if (answer.OutOfReach.Count > 0)
        {
            throw new CommandFailure(TuneView.OutOfReach(answer, units));
        }

        return settings.Json ? JsonText.Write(TuneJson.From(journal.Reading, answer)) + "\n" : TuneView.Of(answer, units).ToText();
    }

    private static string Backwards(TuneSettings settings, Journal journal, TuneWish wish, double minutes, UnitSystem units)
    {
        var answer = Value(ReadyBy.Ask(journal.Bakes, minutes, wish.House, wish.Kitchen));
        if (!answer.IsPossible)
        {
            throw new CommandFailure(ReadyByView.OutOfReach(answer, units));
        }

        return settings.Json ? JsonText.Write(ReadyByJson.From(journal.Reading, answer)) + "\n" : ReadyByView.Of(answer, units).ToText();
    }

    private static T Value<T>(Inference.Attempt<T> attempt)
        where T : notnull =>
        attempt.Match(value => value, problem => throw new CommandFailure($"{problem.Message} {problem.Remedy}"));
}
