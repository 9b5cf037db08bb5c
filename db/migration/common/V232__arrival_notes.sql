-- That somebody on a roster is here, or that this was a slip: the greatest number counts.
create table arrival_note (
  id uuid primary key,
  entry_id uuid not null references entry (id),
  place_id uuid not null references roster_place (id),
  number int not null,
  here boolean not null,
  noted_by varchar(120) not null,
  noted_at timestamp(3) with time zone not null,
  constraint arrival_note_number_once unique (place_id, number)
);
create index arrival_note_of_entry on arrival_note (entry_id);
