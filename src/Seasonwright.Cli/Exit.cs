namespace Seasonwright.Cli;

/// <summary>What a command tells the script that ran it.</summary>
internal enum Exit
{
    Done = 0,

    /// <summary>The input was read and the answer is no, or a question must be answered first. Nothing was written.</summary>
    Refused = 1,

    /// <summary>The input could not be read or the output not be written. Nothing was written.</summary>
    BadInput = 2,
}
