/** How the picture is used: which mark is chosen, and how another is; none of it on paper. */
export interface PlaneChoice {
  readonly chosen: number | null;
  readonly choose: (index: number | null) => void;
  /** Goes to the page of a mark. */
  readonly open: (index: number) => void;
  /** Where the list of marks for keyboard and ear lies over the picture. */
  readonly over: HTMLElement | null;
}
