-- Why a protest is not heard, as a sentence by its key, in JSON; null where people gave the grounds, and in rows from
-- before, whose English words stay in grounds as they are.
alter table protest add column unheard varchar(4000);
