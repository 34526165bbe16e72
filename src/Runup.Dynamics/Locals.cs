using System.Runtime.CompilerServices;

// A tick's methods hold hundreds of wide numbers, and setting them all to zero beforehand took a tenth of it. What is read before it is written the compiler refuses as ever;
// the few spans on the stack are filled by those who make them.
[module: SkipLocalsInit]
