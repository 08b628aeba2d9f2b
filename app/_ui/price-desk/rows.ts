/** Rows of the table at first; asked for more, it shows four times as many again. */
export const ROWS = 30;
