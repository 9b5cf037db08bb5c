-- Questions to the referee and the rulings on them. A ruling is never edited: the greatest number counts.

create table ruling_question (
  id uuid primary key,
  competition_id uuid not null references competition (id),
  entry_id uuid not null references entry (id),
  -- The one segment it is about; null for all. No key, since an event may still lose a segment: then it is about all.
  segment_id uuid,
  topic varchar(20) not null,
  text varchar(2000) not null,
  asked_by varchar(120) not null,
  taken_by varchar(120) not null,
  asked_at timestamp(3) with time zone not null
);
create index ruling_question_of_competition on ruling_question (competition_id);
create index ruling_question_of_entry on ruling_question (entry_id);

create table ruling (
  id uuid primary key,
  question_id uuid not null references ruling_question (id),
  number int not null,
  verdict varchar(20) not null,
  allowed_if varchar(1000) not null,
  grounds varchar(2000) not null,
  rule varchar(200) not null,
  -- Whether the public may see it.
  shown boolean not null,
  -- Why the one before no longer holds.
  reason varchar(500) not null,
  given_by varchar(120) not null,
  given_at timestamp(3) with time zone not null,
  constraint ruling_number_once unique (question_id, number)
);
