-- From when to when an event or a segment was cancelled that takes place again; it forgets that itself. Of those brought
-- back before this table was there nothing is known.
create table past_cancellation (
  id uuid primary key,
  -- An event or a segment.
  subject_id uuid not null,
  cancelled_at timestamp(3) with time zone not null,
  brought_back_at timestamp(3) with time zone not null
);
create index past_cancellation_subject on past_cancellation (subject_id);
