using System.Reflection;
using Spectre.Console.Cli;

namespace BakeInsights.Cli;

/// <summary>
/// Refuses an option that was given without its value. The parser of Spectre.Console.Cli 0.57 does not: it puts a name
/// of its own in the value's place, which would become a file's name.
/// </summary>
internal sealed class MissingValue : ICommandInterceptor
{
    private const string ParsersOwnName = "__default_command";

    /// <inheritdoc/>
    public void Intercept(CommandContext context, CommandSettings settings)
    {
        foreach (var property in settings.GetType().GetProperties())
        {
            var option = property.GetCustomAttribute<CommandOptionAttribute>();
            var values = property.GetValue(settings) switch { string one => [one], string[] many => many, _ => [] };
            if (option is not null && values.Contains(ParsersOwnName))
            {
                throw new CommandFailure($"--{option.LongNames[0]} has no value: write one after it.");
            }
        }
    }
}
