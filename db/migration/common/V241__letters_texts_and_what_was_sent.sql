-- Texts of letters as a competition has changed them; the greatest number counts. Both empty: the house's own again.
create table letter_text (
  id uuid primary key,
  competition_id uuid not null references competition (id),
  kind varchar(20) not null,
  language varchar(8) not null,
  number int not null,
  subject varchar(200) not null,
  body varchar(10000) not null,
  written_by varchar(120) not null,
  written_at timestamp(3) with time zone not null,
  constraint letter_text_number_once unique (competition_id, kind, language, number)
);

-- In which language a team is written to; English where nothing is said.
create table letter_language (
  team_id uuid primary key references team (id),
  language varchar(8) not null
);

-- That somebody had letters mailed or printed: how many of which kind, and nothing of what they say or to whom.
create table letter_sending (
  id uuid primary key,
  competition_id uuid not null references competition (id),
  kind varchar(20) not null,
  way varchar(10) not null,
  letters int not null,
  made_by varchar(120) not null,
  made_at timestamp(3) with time zone not null
);
create index letter_sending_of_competition on letter_sending (competition_id);

-- A letter to a team as it was written, and how far it has come. Names, addresses and texts are emptied one day.
create table letter (
  id uuid primary key,
  sending_id uuid not null references letter_sending (id),
  entry_id uuid not null references entry (id),
  recipient varchar(120) not null,
  address varchar(254) not null,
  language varchar(8) not null,
  subject varchar(600) not null,
  body varchar(30000) not null,
  state varchar(10) not null,
  attempts int not null,
  -- When it goes, or is tried again; null where no service is to send it any more.
  due_at timestamp(3) with time zone,
  claimed_at timestamp(3) with time zone,
  settled_at timestamp(3) with time zone,
  -- What the server said when it did not take it.
  trouble varchar(1000) not null,
  -- The letter in whose place this one goes; one letter is sent again once.
  again_for uuid references letter (id),
  emptied_at timestamp(3) with time zone,
  constraint letter_again_once unique (again_for)
);
create index letter_of_sending on letter (sending_id);
create index letter_of_entry on letter (entry_id);
create index letter_that_waits on letter (state, due_at);
