-- What a form that was sent from a desk was answered, for the minutes in which a browser may send it again: by a
-- double click, a proxy, a shaky line. Kept here and not in memory, so that it holds whichever node is asked.
create table form_answer (
  digest char(64) primary key,
  claimed_at timestamp(3) with time zone not null,
  location varchar(2000),
  notice varchar(4000)
);
create index form_answer_age on form_answer (claimed_at);
