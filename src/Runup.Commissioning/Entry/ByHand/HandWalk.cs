namespace Runup.Commissioning.Entry.ByHand;

/// <summary>Goes along a list of parameters, each of which is asked or passed by, and back where the person wants to.</summary>
internal static class HandWalk
{
    /// <summary>Whether all had their turn; false where the person ended it.</summary>
    /// <param name="count">How many there are.</param>
    /// <param name="turn">Gives one its turn: its place from 0, and whether the person came back to it.</param>
    public static async Task<bool> Along(int count, Func<int, bool, Task<HandTurn>> turn)
    {
        var asked = new Stack<int>();
        var (place, cameBack) = (0, false);
        while (place < count)
        {
            switch (await turn(place, cameBack))
            {
                case HandTurn.Done:
                    asked.Push(place);
                    (place, cameBack) = (place + 1, false);
                    break;
                case HandTurn.PassedBy:
                    (place, cameBack) = (place + 1, false);
                    break;
                case HandTurn.Back:
                    // At the first there is nothing to go back to: it is asked once more.
                    (place, cameBack) = (asked.TryPop(out var before) ? before : place, true);
                    break;
                case HandTurn.Quit:
                    return false;
                default:
                    throw new InvalidOperationException("The set of turns is closed.");
            }
        }

        return true;
    }
}

/// <summary>How a parameter's turn ended.</summary>
internal enum HandTurn
{
    /// <summary>It was asked and answered.</summary>
    Done,

    /// <summary>There was nothing to ask.</summary>
    PassedBy,

    /// <summary>The one before is wanted again.</summary>
    Back,

    /// <summary>The person ended it.</summary>
    Quit,
}
