/** One row of the poll: an answer by a student or by a team, without a name. All of it as typed, without blanks around it. */
export interface PollAnswer {
  /** Year, month and day with hyphens between them; empty where none was noted. */
  readonly day: string;
  readonly className: string;
  readonly from: string;
  /** One for each statement; empty where it was passed over. */
  readonly marks: readonly string[];
  readonly openLine: string;
}
